<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
    <context>
        <name>Actions</name>
        <message>
            <source>&amp;Open a record…</source>
            <translation>&amp;Abrir un registro…</translation>
        </message>
        <message>
            <source>Open a record of measured sessions</source>
            <translation>Abrir un registro de sesiones medidas</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Salir</translation>
        </message>
        <message>
            <source>Close the window</source>
            <translation>Cerrar la ventana</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Deshacer</translation>
        </message>
        <message>
            <source>Take back the last change</source>
            <translation>Anular el último cambio</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Rehacer</translation>
        </message>
        <message>
            <source>Make the change again</source>
            <translation>Hacer el cambio otra vez</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>&amp;Plano</translation>
        </message>
        <message>
            <source>Show the table from above</source>
            <translation>Mostrar la mesa desde arriba</translation>
        </message>
        <message>
            <source>&amp;Film</source>
            <translation>&amp;Vídeo</translation>
        </message>
        <message>
            <source>Show the film with the measured ways</source>
            <translation>Mostrar el video con los recorridos medidos</translation>
        </message>
        <message>
            <source>&amp;Side by side</source>
            <translation>&amp;Lado a lado</translation>
        </message>
        <message>
            <source>Show plan and film together</source>
            <translation>Mostrar plano y video a la vez</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <translation>&amp;Acercar</translation>
        </message>
        <message>
            <source>Enlarge the picture</source>
            <translation>Ampliar la imagen</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <translation>Al&amp;ejar</translation>
        </message>
        <message>
            <source>Make the picture smaller</source>
            <translation>Reducir la imagen</translation>
        </message>
        <message>
            <source>&amp;Whole table</source>
            <translation>&amp;Mesa entera</translation>
        </message>
        <message>
            <source>Fit the whole picture into its space</source>
            <translation>Ajustar la imagen entera a su espacio</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>Lista es&amp;trecha de secciones</translation>
        </message>
        <message>
            <source>Show the places as icons only</source>
            <translation>Mostrar las secciones solo como iconos</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <translation>&amp;Reproducir</translation>
        </message>
        <message>
            <source>Play in real time, or pause</source>
            <translation>Reproducir en tiempo real o pausar</translation>
        </message>
        <message>
            <source>Image back</source>
            <translation>Fotograma anterior</translation>
        </message>
        <message>
            <source>One image back</source>
            <translation>Un fotograma atrás</translation>
        </message>
        <message>
            <source>Image on</source>
            <translation>Fotograma siguiente</translation>
        </message>
        <message>
            <source>One image on</source>
            <translation>Un fotograma adelante</translation>
        </message>
        <message>
            <source>Event back</source>
            <translation>Suceso anterior</translation>
        </message>
        <message>
            <source>Back to the last contact, strike or rest</source>
            <translation>Volver al último contacto, golpe o reposo</translation>
        </message>
        <message>
            <source>Event on</source>
            <translation>Suceso siguiente</translation>
        </message>
        <message>
            <source>On to the next contact or to rest</source>
            <translation>Ir al próximo contacto o al reposo</translation>
        </message>
        <message>
            <source>Shot back</source>
            <translation>Tiro anterior</translation>
        </message>
        <message>
            <source>The shot before</source>
            <translation>El tiro de antes</translation>
        </message>
        <message>
            <source>Shot on</source>
            <translation>Tiro siguiente</translation>
        </message>
        <message>
            <source>The next shot</source>
            <translation>El próximo tiro</translation>
        </message>
        <message>
            <source>&amp;Filter the shots</source>
            <translation>&amp;Filtrar los tiros</translation>
        </message>
        <message>
            <source>List the shots that meet conditions, or go back to all sessions</source>
            <translation>Listar los tiros que cumplen unas condiciones, o volver a todas las sesiones</translation>
        </message>
        <message>
            <source>Play the &amp;list</source>
            <translation>Reproducir la &amp;lista</translation>
        </message>
        <message>
            <source>Play the listed shots one after another, or stop</source>
            <translation>Reproducir uno tras otro los tiros de la lista, o detenerse</translation>
        </message>
        <message>
            <source>&amp;Made</source>
            <translation>&amp;Embocada</translation>
        </message>
        <message>
            <source>The chosen ball went into its pocket</source>
            <translation>La bola elegida entró en su tronera</translation>
        </message>
        <message>
            <source>Missed thic&amp;k</source>
            <translation>Fallada, &amp;gruesa</translation>
        </message>
        <message>
            <source>The chosen ball was hit too full</source>
            <translation>La bola elegida se tomó demasiado llena</translation>
        </message>
        <message>
            <source>Missed thi&amp;n</source>
            <translation>Fallada, fi&amp;na</translation>
        </message>
        <message>
            <source>The chosen ball was cut too much</source>
            <translation>La bola elegida se cortó demasiado</translation>
        </message>
        <message>
            <source>M&amp;issed</source>
            <translation>Fa&amp;llada</translation>
        </message>
        <message>
            <source>The chosen ball was missed, on either side</source>
            <translation>La bola elegida se falló, por cualquier lado</translation>
        </message>
        <message>
            <source>&amp;Safety</source>
            <translation>&amp;Defensa</translation>
        </message>
        <message>
            <source>A safety was played</source>
            <translation>Se jugó una defensa</translation>
        </message>
        <message>
            <source>S&amp;cratch</source>
            <translation>&amp;Blanca perdida</translation>
        </message>
        <message>
            <source>The cue ball fell or left the table</source>
            <translation>La blanca cayó o salió de la mesa</translation>
        </message>
        <message>
            <source>&amp;Foul…</source>
            <translation>&amp;Falta…</translation>
        </message>
        <message>
            <source>Another foul, to be chosen</source>
            <translation>Otra falta, a elegir</translation>
        </message>
        <message>
            <source>&amp;Break</source>
            <translation>&amp;Saque</translation>
        </message>
        <message>
            <source>The balls were broken</source>
            <translation>Se hizo el saque</translation>
        </message>
        <message>
            <source>Su&amp;ggest a shot</source>
            <translation>Suge&amp;rir un tiro</translation>
        </message>
        <message>
            <source>Show what would be suggested here, or hide it</source>
            <translation>Mostrar lo que se sugeriría aquí, u ocultarlo</translation>
        </message>
        <message>
            <source>&amp;Rack the balls</source>
            <translation>Ar&amp;mar las bolas</translation>
        </message>
        <message>
            <source>Set all balls up for a break</source>
            <translation>Colocar todas las bolas para un saque</translation>
        </message>
        <message>
            <source>Ne&amp;xt frame</source>
            <translation>Partida sig&amp;uiente</translation>
        </message>
        <message>
            <source>End this frame and begin the next one</source>
            <translation>Terminar esta partida y empezar la siguiente</translation>
        </message>
        <message>
            <source>&amp;End the session</source>
            <translation>&amp;Terminar la sesión</translation>
        </message>
        <message>
            <source>Keep all shots and close the session</source>
            <translation>Conservar todos los tiros y cerrar la sesión</translation>
        </message>
        <message>
            <source>&amp;Shots behind it</source>
            <translation>&amp;Tiros de esta parte</translation>
        </message>
        <message>
            <source>Look at the shots behind the chosen part of a chart</source>
            <translation>Ver los tiros que forman la parte elegida de un gráfico</translation>
        </message>
        <message>
            <source>&amp;Export the chart…</source>
            <translation>&amp;Exportar el gráfico…</translation>
        </message>
        <message>
            <source>Write the chosen chart as SVG, PNG or CSV</source>
            <translation>Guardar el gráfico elegido como SVG, PNG o CSV</translation>
        </message>
        <message>
            <source>Export the &amp;report…</source>
            <translation>Exportar el &amp;informe…</translation>
        </message>
        <message>
            <source>Write the report as PDF or HTML, or its numbers as CSV</source>
            <translation>Guardar el informe como PDF o HTML, o sus números como CSV</translation>
        </message>
        <message>
            <source>Step &amp;back</source>
            <translation>Paso &amp;anterior</translation>
        </message>
        <message>
            <source>The step of the set-up before</source>
            <translation>El paso anterior de la configuración</translation>
        </message>
        <message>
            <source>Step &amp;on</source>
            <translation>Paso &amp;siguiente</translation>
        </message>
        <message>
            <source>The next step of the set-up</source>
            <translation>El paso siguiente de la configuración</translation>
        </message>
        <message>
            <source>&amp;Check the rig again…</source>
            <translation>&amp;Comprobar de nuevo el montaje…</translation>
        </message>
        <message>
            <source>Ask a film whether the rig in use still fits</source>
            <translation>Comprobar con un video si el montaje en uso sigue siendo válido</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Detener</translation>
        </message>
        <message>
            <source>Stop the long work that is going on</source>
            <translation>Detener el trabajo largo que está en curso</translation>
        </message>
        <message>
            <source>&amp;Metres per second</source>
            <translation>&amp;Metros por segundo</translation>
        </message>
        <message>
            <source>Show speeds in m/s</source>
            <translation>Mostrar las velocidades en m/s</translation>
        </message>
        <message>
            <source>&amp;Kilometres per hour</source>
            <translation>&amp;Kilómetros por hora</translation>
        </message>
        <message>
            <source>Show speeds in km/h</source>
            <translation>Mostrar las velocidades en km/h</translation>
        </message>
        <message>
            <source>M&amp;iles per hour</source>
            <translation>M&amp;illas por hora</translation>
        </message>
        <message>
            <source>Show speeds in mph</source>
            <translation>Mostrar las velocidades en mph</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Como el &amp;sistema</translation>
        </message>
        <message>
            <source>Light or dark as the desktop is</source>
            <translation>Clara u oscura, como el escritorio</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Clara</translation>
        </message>
        <message>
            <source>Always light</source>
            <translation>Siempre clara</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>&amp;Oscura</translation>
        </message>
        <message>
            <source>Always dark</source>
            <translation>Siempre oscura</translation>
        </message>
        <message>
            <source>&amp;Keys</source>
            <translation>&amp;Teclas</translation>
        </message>
        <message>
            <source>&amp;About Ferrule</source>
            <translation>&amp;Acerca de Ferrule</translation>
        </message>
        <message>
            <source>&amp;Record</source>
            <translation>&amp;Registro</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>&amp;Edición</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ver</translation>
        </message>
        <message>
            <source>&amp;Step</source>
            <translation>&amp;Paso</translation>
        </message>
        <message>
            <source>Sess&amp;ion</source>
            <translation>&amp;Sesión</translation>
        </message>
        <message>
            <source>Fi&amp;gures</source>
            <translation>&amp;Gráficos</translation>
        </message>
        <message>
            <source>Set-&amp;up</source>
            <translation>&amp;Configuración</translation>
        </message>
        <message>
            <source>S&amp;peed unit</source>
            <translation>&amp;Unidad de velocidad</translation>
        </message>
        <message>
            <source>&amp;Appearance</source>
            <translation>Apa&amp;riencia</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>A&amp;yuda</translation>
        </message>
        <message>
            <source>The desktop's language, where the program speaks it</source>
            <translation>El idioma del escritorio, si el programa lo habla</translation>
        </message>
        <message>
            <source>Show every word in this language</source>
            <translation>Mostrar todas las palabras en este idioma</translation>
        </message>
        <message>
            <source>&amp;How this place is used</source>
            <translation>&amp;Cómo se usa esta sección</translation>
        </message>
        <message>
            <source>What the place is for, and the steps in their order</source>
            <translation>Para qué sirve la sección, y los pasos en orden</translation>
        </message>
        <message>
            <source>Every action of the window and its keys</source>
            <translation>Todas las acciones de la ventana y sus teclas</translation>
        </message>
        <message>
            <source>Version, cautions and licences</source>
            <translation>Versión, precauciones y licencias</translation>
        </message>
        <message>
            <source>&amp;Language</source>
            <translation>&amp;Idioma</translation>
        </message>
        <message>
            <source>Balls from a &amp;photo…</source>
            <translation>Bolas de una f&amp;oto…</translation>
        </message>
        <message>
            <source>Put the balls where a photo of the table's camera shows them</source>
            <translation>Poner las bolas donde las muestra una foto de la cámara de la mesa</translation>
        </message>
        <message>
            <source>&amp;Correct the shot…</source>
            <translation>&amp;Corregir el tiro…</translation>
        </message>
        <message>
            <source>Put right what was read wrongly of the shot in Review</source>
            <translation>Rectificar en la revisión lo que se leyó mal del tiro</translation>
        </message>
        <message>
            <source>Correct &amp;ball and pocket…</source>
            <translation>Corregir &amp;bola y tronera…</translation>
        </message>
        <message>
            <source>Say which ball was meant for which pocket</source>
            <translation>Decir qué bola iba a qué tronera</translation>
        </message>
        <message>
            <source>Correct who &amp;played…</source>
            <translation>Corregir quién &amp;jugó…</translation>
        </message>
        <message>
            <source>Say who played the shot</source>
            <translation>Decir quién jugó el tiro</translation>
        </message>
        <message>
            <source>Correct the ru&amp;ling…</source>
            <translation>Corregir la dec&amp;isión…</translation>
        </message>
        <message>
            <source>Replace what the referee made of the shot</source>
            <translation>Reemplazar lo que el árbitro decidió del tiro</translation>
        </message>
        <message>
            <source>&amp;Swap the names of two balls…</source>
            <translation>I&amp;ntercambiar los nombres de dos bolas…</translation>
        </message>
        <message>
            <source>Say that two balls were taken for each other</source>
            <translation>Decir que dos bolas se confundieron entre sí</translation>
        </message>
        <message>
            <source>&amp;Move balls</source>
            <translation>&amp;Mover bolas</translation>
        </message>
        <message>
            <source>Move balls to where they lay before the shot, then after it</source>
            <translation>Mover las bolas a donde estaban antes del tiro y luego después</translation>
        </message>
        <message>
            <source>Write a no&amp;te</source>
            <translation>Escribir una no&amp;ta</translation>
        </message>
        <message>
            <source>Write a note on the shot in Review</source>
            <translation>Escribir una nota sobre el tiro en la revisión</translation>
        </message>
        <message>
            <source>Give a ta&amp;g</source>
            <translation>Poner una eti&amp;queta</translation>
        </message>
        <message>
            <source>Give the shot in Review a tag, by which it can be found</source>
            <translation>Poner al tiro en la revisión una etiqueta por la que se encuentra</translation>
        </message>
        <message>
            <source>S&amp;ave the picture…</source>
            <translation>&amp;Guardar la imagen…</translation>
        </message>
        <message>
            <source>&amp;Add a player</source>
            <translation>&amp;Añadir un jugador</translation>
        </message>
        <message>
            <source>Add a player to the record</source>
            <translation>Añadir un jugador al registro</translation>
        </message>
        <message>
            <source>Add a &amp;guest</source>
            <translation>Añadir un &amp;invitado</translation>
        </message>
        <message>
            <source>Add somebody whose shots are given to a player later, or erased</source>
            <translation>Añadir a alguien cuyos tiros se darán luego a un jugador o se borrarán</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>&amp;Jugadores</translation>
        </message>
        <message>
            <source>&amp;Export the player…</source>
            <translation>&amp;Exportar al jugador…</translation>
        </message>
        <message>
            <source>Write all that is kept of the chosen player into a folder</source>
            <translation>Escribir en una carpeta todo lo que se guarda del jugador elegido</translation>
        </message>
        <message>
            <source>&amp;Take in another record…</source>
            <translation>&amp;Incorporar otro registro…</translation>
        </message>
        <message>
            <source>Add what a record of another computer holds, without doubles</source>
            <translation>Añadir lo que contiene el registro de otro ordenador, sin duplicados</translation>
        </message>
        <message>
            <source>Answer &amp;1</source>
            <translation>Respuesta &amp;1</translation>
        </message>
        <message>
            <source>Give the answer of this number to what the referee asks</source>
            <translation>Dar la respuesta de este número a lo que pregunta el árbitro</translation>
        </message>
        <message>
            <source>Answer &amp;2</source>
            <translation>Respuesta &amp;2</translation>
        </message>
        <message>
            <source>Answer &amp;3</source>
            <translation>Respuesta &amp;3</translation>
        </message>
        <message>
            <source>Answer &amp;4</source>
            <translation>Respuesta &amp;4</translation>
        </message>
        <message>
            <source>Answer &amp;5</source>
            <translation>Respuesta &amp;5</translation>
        </message>
        <message>
            <source>Answer &amp;6</source>
            <translation>Respuesta &amp;6</translation>
        </message>
        <message>
            <source>Answer &amp;7</source>
            <translation>Respuesta &amp;7</translation>
        </message>
        <message>
            <source>Answer &amp;8</source>
            <translation>Respuesta &amp;8</translation>
        </message>
        <message>
            <source>Answer &amp;later</source>
            <translation>Responder &amp;luego</translation>
        </message>
        <message>
            <source>Put the question off; Review keeps the shot marked</source>
            <translation>Aplazar la pregunta; el tiro queda marcado en Revisión</translation>
        </message>
        <message>
            <source>&amp;What the referee asks</source>
            <translation>Lo que pregunta el &amp;árbitro</translation>
        </message>
        <message>
            <source>Split or &amp;join shots…</source>
            <translation>&amp;Partir o unir tiros…</translation>
        </message>
        <message>
            <source>Say where a shot ends: another one began in it, or the next belongs to it</source>
            <translation>Decir dónde acaba un tiro: otro empezó en él, o el siguiente le pertenece</translation>
        </message>
        <message>
            <source>Balls put do&amp;wn…</source>
            <translation>B&amp;olas colocadas…</translation>
        </message>
        <message>
            <source>Put right which balls were put down before the shot</source>
            <translation>Corregir qué bolas se colocaron antes del tiro</translation>
        </message>
        <message>
            <source>Write the picture that Review shows as PNG, or the plan as SVG</source>
            <translation>Escribir la imagen que muestra la revisión como PNG, o el plano como SVG</translation>
        </message>
        <message>
            <source>Save a &amp;clip…</source>
            <translation>Guardar un &amp;clip…</translation>
        </message>
        <message>
            <source>Write the shot in Review as a short film</source>
            <translation>Escribir el tiro de la revisión como video corto</translation>
        </message>
        <message>
            <source>&amp;Compare shots</source>
            <translation>&amp;Comparar tiros</translation>
        </message>
        <message>
            <source>Hold this shot and set others beside it, or end that</source>
            <translation>Fijar este tiro y poner otros al lado, o terminar</translation>
        </message>
        <message>
            <source>Play with &amp;sound</source>
            <translation>Con &amp;sonido</translation>
        </message>
        <message>
            <source>Let the film be heard while it plays, or not</source>
            <translation>Oír el video mientras se reproduce, o no</translation>
        </message>
        <message>
            <source>Fell &amp;too</source>
            <translation>T&amp;ambién cayó</translation>
        </message>
        <message>
            <source>The chosen ball fell in its pocket with the last shot, as on a break; dragging it into a pocket says the same</source>
            <translation>La bola elegida también cayó en su tronera con el último tiro, por ejemplo en el saque; arrastrarla a una tronera dice lo mismo</translation>
        </message>
    </context>
    <context>
        <name>AnswerWords</name>
        <message>
            <source>Yes</source>
            <translation>Sí</translation>
        </message>
        <message>
            <source>No</source>
            <translation>No</translation>
        </message>
        <message>
            <source>It left the table</source>
            <translation>Salió de la mesa</translation>
        </message>
        <message>
            <source>It lies on the table</source>
            <translation>Está en la mesa</translation>
        </message>
        <message>
            <source>It fell: %1</source>
            <comment>a pocket</comment>
            <translation>Cayó: %1</translation>
        </message>
        <message>
            <source>A safety was called</source>
            <translation>Se cantó una defensa</translation>
        </message>
        <message>
            <source>%1 has %2</source>
            <comment>a player, solids or stripes</comment>
            <translation>%1 lleva %2</translation>
        </message>
        <message>
            <source>%1 or more</source>
            <comment>balls</comment>
            <translation>%1 o más</translation>
        </message>
        <message>
            <source>Leave it as it is ruled</source>
            <translation>Dejarlo como está juzgado</translation>
        </message>
    </context>
    <context>
        <name>AskedSentence</name>
        <message>
            <source>Aim</source>
            <translation>Dirección</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Velocidad</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Lado</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Altura</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Elevación</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the left of what was asked</source>
            <translation>la blanca sale %1 a la izquierda de lo pedido</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the right of what was asked</source>
            <translation>la blanca sale %1 a la derecha de lo pedido</translation>
        </message>
        <message>
            <source>shots come out %1 too fast</source>
            <translation>los tiros salen %1 demasiado rápidos</translation>
        </message>
        <message>
            <source>shots come out %1 too slow</source>
            <translation>los tiros salen %1 demasiado lentos</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far right</source>
            <translation>la suela toca la bola %1 demasiado a la derecha</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far left</source>
            <translation>la suela toca la bola %1 demasiado a la izquierda</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too high</source>
            <translation>la suela toca la bola %1 demasiado arriba</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too low</source>
            <translation>la suela toca la bola %1 demasiado abajo</translation>
        </message>
        <message>
            <source>the cue is %1 too steep</source>
            <translation>el taco va %1 demasiado inclinado</translation>
        </message>
        <message>
            <source>the cue is %1 too flat</source>
            <translation>el taco va %1 demasiado plano</translation>
        </message>
        <message>
            <source>the harder the shot, the more falls short: %1 of what is asked</source>
            <translation>cuanto más fuerte es el tiro, más se queda corto: un %1 de lo pedido</translation>
        </message>
        <message>
            <source>the harder the shot, the more it overshoots: %1 of what is asked</source>
            <translation>cuanto más fuerte es el tiro, más se pasa: un %1 de lo pedido</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too small</source>
            <translation>los cambios de dirección salen un %1 demasiado pequeños</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too large</source>
            <translation>los cambios de dirección salen un %1 demasiado grandes</translation>
        </message>
        <message>
            <source>the more is asked, the more is missing: %1 of it</source>
            <translation>cuanto más se pide, más falta: un %1 de lo pedido</translation>
        </message>
        <message>
            <source>the more is asked, the more is too much: %1 of it</source>
            <translation>cuanto más se pide, más sobra: un %1 de lo pedido</translation>
        </message>
        <message>
            <source>long shots fall %1 short</source>
            <translation>los tiros largos se quedan un %1 cortos</translation>
        </message>
        <message>
            <source>long shots go %1 too far</source>
            <translation>los tiros largos se pasan un %1</translation>
        </message>
        <message>
            <source>clipped at %1: more was asked and did not arrive</source>
            <translation>tope en %1: se pidió más y no llegó</translation>
        </message>
        <message>
            <source>comes as asked, to within %1</source>
            <translation>sale como se pide, con un margen de %1</translation>
        </message>
        <message>
            <source>single shots scatter by %1</source>
            <translation>los tiros sueltos se dispersan %1</translation>
        </message>
        <message>
            <source>single shots scatter by less than the film can tell</source>
            <translation>los tiros sueltos se dispersan menos de lo que el video permite ver</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>quantity, findings</comment>
            <translation>%1: %2.</translation>
        </message>
    </context>
    <context>
        <name>CameraWords</name>
        <message>
            <source>%1 × %2, %3 images a second</source>
            <translation>%1 × %2, %3 imágenes por segundo</translation>
        </message>
    </context>
    <context>
        <name>ChartWords</name>
        <message>
            <source>%1 m</source>
            <translation>%1 m</translation>
        </message>
        <message>
            <source>%1: %2 (%3 to %4), %5</source>
            <translation>%1: %2 (%3 a %4), %5</translation>
        </message>
        <message>
            <source>a change beyond luck</source>
            <translation>un cambio mayor que el azar</translation>
        </message>
        <message>
            <source>no change beyond luck</source>
            <translation>ningún cambio mayor que el azar</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session. Hollow: matches.</source>
            <translation>Líneas y franja: intervalo del 95 %. Números: tiros de la sesión. Puntos huecos: encuentros.</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session.</source>
            <translation>Líneas y franja: intervalo del 95 %. Números: tiros de la sesión.</translation>
        </message>
        <message>
            <source>cut across, distance down</source>
            <translation>corte en horizontal, distancia en vertical</translation>
        </message>
        <message>
            <source>only %1</source>
            <translation>solo %1</translation>
        </message>
        <message>
            <source>Made, 95 % interval and number tried. Fewer than %1: not enough to say.</source>
            <translation>Embocadas, intervalo del 95 % y número de intentos. Menos de %1: no basta para opinar.</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>Embocadas por tronera</translation>
        </message>
        <message>
            <source>Made and number tried; lines: 95 % interval.</source>
            <translation>Embocadas y número de intentos; líneas: intervalo del 95 %.</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>De qué lado se falla</translation>
        </message>
        <message>
            <source>too thick</source>
            <translation>demasiado gruesa</translation>
        </message>
        <message>
            <source>too thin</source>
            <translation>demasiado fina</translation>
        </message>
        <message>
            <source>%1 thick</source>
            <translation>%1 gruesas</translation>
        </message>
        <message>
            <source>not enough</source>
            <translation>no basta</translation>
        </message>
        <message>
            <source>cuts to the left</source>
            <translation>cortes a la izquierda</translation>
        </message>
        <message>
            <source>cuts to the right</source>
            <translation>cortes a la derecha</translation>
        </message>
        <message>
            <source>Missed cuts only. Right: 95 % interval of the share that was too thick.</source>
            <translation>Solo cortes fallados. A la derecha: intervalo del 95 % de la parte que fue demasiado gruesa.</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>Tiros parecidos en otras condiciones</translation>
        </message>
        <message>
            <source>first 40 minutes</source>
            <translation>primeros 40 minutos</translation>
        </message>
        <message>
            <source>after 40 minutes</source>
            <translation>después de 40 minutos</translation>
        </message>
        <message>
            <source>in practice</source>
            <translation>en entrenamiento</translation>
        </message>
        <message>
            <source>in matches</source>
            <translation>en encuentros</translation>
        </message>
        <message>
            <source>Made, equally hard shots; lines: 95 % interval of the difference.</source>
            <translation>Embocadas, tiros de igual dificultad; líneas: intervalo del 95 % de la diferencia.</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>a band of speed and its unit</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>Embocadas según la entrada en la tronera</translation>
        </message>
        <message>
            <source>over %1°</source>
            <translation>más de %1°</translation>
        </message>
        <message>
            <source>%1 to %2°</source>
            <translation>%1 a %2°</translation>
        </message>
        <message>
            <source>corner, %1</source>
            <comment>a pocket, angles</comment>
            <translation>esquina, %1</translation>
        </message>
        <message>
            <source>side, %1</source>
            <comment>a pocket, angles</comment>
            <translation>centro, %1</translation>
        </message>
    </context>
    <context>
        <name>CheckSentence</name>
        <message>
            <source>%1 fits %2 and %3.</source>
            <translation>%1 concuerda con %2 y %3.</translation>
        </message>
        <message>
            <source>The camera has moved by %1 mm and turned by %2 degrees since %3 was made; make the rig again from %4.</source>
            <translation>La cámara se ha movido %1 mm y ha girado %2 grados desde que se hizo %3; calcule de nuevo el montaje con %4.</translation>
        </message>
        <message>
            <source>The lens in %1 belongs to another camera or another zoom than %2; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>La lente de %1 es de otra cámara o de otro zoom que %2; calibre la lente de esta cámara y calcule de nuevo el montaje con ella.</translation>
        </message>
        <message>
            <source>%1 was straightened before, and the lens in %2 straightens it a second time; switch off the lens correction of the camera or the editor and film again.</source>
            <translation>%1 ya se había enderezado, y la lente de %2 lo endereza por segunda vez; desactive la corrección de lente en la cámara o en el editor y grabe de nuevo.</translation>
        </message>
        <message>
            <source>%1 is bent by its lens and %2 does not straighten it; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>%1 está curvado por su lente y %2 no lo endereza; calibre la lente de esta cámara y calcule de nuevo el montaje con ella.</translation>
        </message>
        <message>
            <source>The picture of %1 is %2 times the size that the lens in %3 was made for; film at the size, zoom and crop of the calibration, or calibrate again at this one and make the rig again.</source>
            <translation>La imagen de %1 es %2 veces el tamaño para el que se hizo la lente de %3; grabe con el tamaño, el zoom y el recorte de la calibración, o calibre otra vez con estos y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>The tags lie %1 mm higher than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>Las marcas están %1 mm más altas de lo que dice %2; mida su altura sobre el paño, corrija el archivo y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>The tags lie %1 mm lower than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>Las marcas están %1 mm más bajas de lo que dice %2; mida su altura sobre el paño, corrija el archivo y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>Tag %1 lies %2 mm from where %3 has it; measure its corners, correct the file and make the rig again.</source>
            <translation>La marca %1 está a %2 mm de donde la sitúa %3; mida sus esquinas, corrija el archivo y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>The tags %1 lie in each other's place; swap them, or correct %2, and make the rig again.</source>
            <translation>Las marcas %1 están una en el lugar de la otra; intercámbielas, o corrija %2, y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>Tag %1 is turned by %2 degrees from what %3 says; turn it, or correct the file, and make the rig again.</source>
            <translation>La marca %1 está girada %2 grados respecto de lo que dice %3; gírela, o corrija el archivo, y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>The table is %1 mm longer and %2 mm wider than %3 says (less than 0: shorter, narrower); measure it nose to nose, correct the file and make the rig again.</source>
            <translation>La mesa es %1 mm más larga y %2 mm más ancha de lo que dice %3 (menos de 0: más corta, más estrecha); mídala de nariz a nariz, corrija el archivo y calcule de nuevo el montaje.</translation>
        </message>
        <message>
            <source>%1 does not fit %2 and %3, and no single fault explains it; measure the tags again, make the rig again from this film, and check again.</source>
            <translation>%1 no concuerda con %2 y %3, y ningún error por sí solo lo explica; mida otra vez las marcas, calcule de nuevo el montaje con este video y compruebe otra vez.</translation>
        </message>
        <message>
            <source>%1: not seen</source>
            <translation>%1: no se ve</translation>
        </message>
        <message>
            <source>%1: %2 mm (sound up to %3 mm)</source>
            <translation>%1: %2 mm (correcto hasta %3 mm)</translation>
        </message>
        <message>
            <source>%1 - too much</source>
            <translation>%1: demasiado</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <comment>two cushions</comment>
            <translation>%1 y %2</translation>
        </message>
        <message>
            <source>Tag %1: from its place</source>
            <translation>Marca %1: respecto de su lugar</translation>
        </message>
        <message>
            <source>%1: nose from a straight line</source>
            <comment>a cushion</comment>
            <translation>%1: nariz respecto de una recta</translation>
        </message>
        <message>
            <source>%1: nose from its place (+ inward)</source>
            <comment>a cushion</comment>
            <translation>%1: nariz respecto de su lugar (+ hacia dentro)</translation>
        </message>
        <message>
            <source>%1: from parallel</source>
            <comment>two cushions</comment>
            <translation>%1: respecto de la paralela</translation>
        </message>
        <message>
            <source>Length nose to nose, seen minus measured</source>
            <translation>Largo de nariz a nariz, visto menos medido</translation>
        </message>
        <message>
            <source>Width nose to nose, seen minus measured</source>
            <translation>Ancho de nariz a nariz, visto menos medido</translation>
        </message>
        <message>
            <source>Diameters of the balls, largest minus smallest</source>
            <translation>Diámetros de las bolas, el mayor menos el menor</translation>
        </message>
        <message>
            <source>Deepest ball inside a cushion or another ball</source>
            <translation>Bola más metida en una banda o en otra bola</translation>
        </message>
    </context>
    <context>
        <name>CorrectionMenu</name>
        <message>
            <source>is %1, and the other way round</source>
            <translation>es %1, y al revés</translation>
        </message>
        <message>
            <source>to %1</source>
            <translation>a %1</translation>
        </message>
        <message>
            <source>No pot was tried</source>
            <translation>No se intentó meter ninguna bola</translation>
        </message>
        <message>
            <source>Nobody knows</source>
            <translation>Nadie lo sabe</translation>
        </message>
        <message>
            <source>It was a foul</source>
            <translation>Fue falta</translation>
        </message>
        <message>
            <source>It was no foul</source>
            <translation>No fue falta</translation>
        </message>
        <message>
            <source>%1 is at the table next</source>
            <translation>%1 juega después</translation>
        </message>
        <message>
            <source>The cue ball stays as it lies</source>
            <translation>La blanca se queda donde está</translation>
        </message>
        <message>
            <source>%1 wins the frame</source>
            <translation>%1 gana la partida</translation>
        </message>
        <message>
            <source>The frame goes on</source>
            <translation>La partida continúa</translation>
        </message>
        <message>
            <source>As the referee ruled</source>
            <translation>Como decidió el árbitro</translation>
        </message>
        <message>
            <source>In the whole shot</source>
            <translation>En todo el tiro</translation>
        </message>
        <message>
            <source>From this image on</source>
            <translation>Desde esta imagen</translation>
        </message>
        <message>
            <source>&amp;Result</source>
            <translation>&amp;Resultado</translation>
        </message>
        <message>
            <source>&amp;Ball and pocket</source>
            <translation>&amp;Bola y tronera</translation>
        </message>
        <message>
            <source>Ball that was met &amp;first</source>
            <translation>Bola tocada &amp;primero</translation>
        </message>
        <message>
            <source>Who &amp;played</source>
            <translation>Quién &amp;jugó</translation>
        </message>
        <message>
            <source>R&amp;uling</source>
            <translation>&amp;Decisión</translation>
        </message>
        <message>
            <source>&amp;Names of two balls</source>
            <translation>&amp;Nombres de dos bolas</translation>
        </message>
        <message>
            <source>Struck in this image</source>
            <translation>Golpeado en esta imagen</translation>
        </message>
        <message>
            <source>At rest from this image on</source>
            <translation>En reposo desde esta imagen</translation>
        </message>
        <message>
            <source>&amp;Strike and rest</source>
            <translation>&amp;Golpe y reposo</translation>
        </message>
        <message>
            <source>Another shot was struck in this image</source>
            <translation>En este fotograma se jugó otro tiro</translation>
        </message>
        <message>
            <source>The next shot belongs to this one</source>
            <translation>El siguiente tiro pertenece a este</translation>
        </message>
        <message>
            <source>%1, put down at %2</source>
            <translation>%1, colocada en %2</translation>
        </message>
        <message>
            <source>Nobody put it down</source>
            <translation>Nadie la colocó</translation>
        </message>
        <message>
            <source>It was another ball</source>
            <translation>Era otra bola</translation>
        </message>
        <message>
            <source>A ball was put down that is not listed</source>
            <translation>Se colocó una bola que no está en la lista</translation>
        </message>
        <message>
            <source>&amp;Where the shot ends</source>
            <translation>&amp;Fin del tiro</translation>
        </message>
        <message>
            <source>Balls put &amp;down before it</source>
            <translation>Bolas colocadas &amp;antes</translation>
        </message>
    </context>
    <context>
        <name>CorrectionWords</name>
        <message>
            <source>player</source>
            <translation>jugador</translation>
        </message>
        <message>
            <source>result</source>
            <translation>resultado</translation>
        </message>
        <message>
            <source>first contact</source>
            <translation>primer contacto</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>blanca perdida</translation>
        </message>
        <message>
            <source>ball</source>
            <translation>bola</translation>
        </message>
        <message>
            <source>pocket</source>
            <translation>tronera</translation>
        </message>
        <message>
            <source>ruling</source>
            <translation>decisión</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lectura</translation>
        </message>
        <message>
            <source>names of two balls</source>
            <translation>nombres de dos bolas</translation>
        </message>
        <message>
            <source>a ball's place before the shot</source>
            <translation>lugar de una bola antes del tiro</translation>
        </message>
        <message>
            <source>a ball's place after the shot</source>
            <translation>lugar de una bola después del tiro</translation>
        </message>
        <message>
            <source>strike and rest</source>
            <translation>golpe y reposo</translation>
        </message>
        <message>
            <source>unknown</source>
            <translation>desconocido</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other</source>
            <translation>%1 y %2 se confundieron entre sí</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other from %3 on</source>
            <translation>%1 y %2 se confundieron entre sí desde %3</translation>
        </message>
        <message>
            <source>%1 put on the table before the shot</source>
            <translation>%1 puesta en la mesa antes del tiro</translation>
        </message>
        <message>
            <source>%1 put on the table after the shot</source>
            <translation>%1 puesta en la mesa después del tiro</translation>
        </message>
        <message>
            <source>%1 moved by %2 before the shot</source>
            <translation>%1 movida %2 antes del tiro</translation>
        </message>
        <message>
            <source>%1 moved by %2 after the shot</source>
            <translation>%1 movida %2 después del tiro</translation>
        </message>
        <message>
            <source>Strike and rest: measured %1 and %2, corrected to %3 and %4</source>
            <translation>Golpe y reposo: medidos %1 y %2, corregidos a %3 y %4</translation>
        </message>
        <message>
            <source>Ruling: replaced by a person's</source>
            <translation>Decisión: reemplazada por la de una persona</translation>
        </message>
        <message>
            <source>%1: %2, confirmed</source>
            <translation>%1: %2, confirmado</translation>
        </message>
        <message>
            <source>%1: measured %2, corrected to %3</source>
            <translation>%1: medido %2, corregido a %3</translation>
        </message>
        <message>
            <source>ball and pocket</source>
            <translation>bola y tronera</translation>
        </message>
        <message>
            <source>Say first which ball was meant for which pocket; then it can be made.</source>
            <translation>Diga primero qué bola iba a qué tronera; después puede estar embocada.</translation>
        </message>
        <message>
            <source>No referee watched this shot, so there is no ruling to replace.</source>
            <translation>Ningún árbitro siguió este tiro: no hay decisión que reemplazar.</translation>
        </message>
        <message>
            <source>Neither ball was followed in this shot, so there are no names to swap.</source>
            <translation>Ninguna de las dos bolas se siguió en este tiro: no hay nombres que intercambiar.</translation>
        </message>
        <message>
            <source>The ways of this shot do not reach so far; choose a time between them.</source>
            <translation>Los recorridos de este tiro no llegan tan lejos; elija un momento dentro de ellos.</translation>
        </message>
        <message>
            <source>A later correction in this frame rests on this one; take that one back first.</source>
            <translation>Una corrección posterior de esta partida se apoya en esta; retire primero aquella.</translation>
        </message>
        <message>
            <source>This frame is still being put in; undo the shot in Session instead.</source>
            <translation>Esta partida aún se está introduciendo; deshaga el tiro en Sesión.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>note</source>
            <translation>nota</translation>
        </message>
        <message>
            <source>tag</source>
            <translation>etiqueta</translation>
        </message>
        <message>
            <source>two shots in one</source>
            <translation>dos tiros en uno</translation>
        </message>
        <message>
            <source>one shot in two</source>
            <translation>un tiro en dos</translation>
        </message>
        <message>
            <source>a ball put down before the shot</source>
            <translation>una bola colocada antes del tiro</translation>
        </message>
        <message>
            <source>suggestion</source>
            <translation>sugerencia</translation>
        </message>
        <message>
            <source>%1 was not put down at %2</source>
            <translation>%1 no se colocó en %2</translation>
        </message>
        <message>
            <source>%1 was put down at %2</source>
            <translation>%1 se colocó en %2</translation>
        </message>
        <message>
            <source>Put down at %1: measured %2, corrected to %3</source>
            <translation>Colocada en %1: medido %2, corregido a %3</translation>
        </message>
        <message>
            <source>%1 put down %2 away from where it was measured</source>
            <translation>%1 colocada a %2 de donde se midió</translation>
        </message>
        <message>
            <source>Measured as one shot, split in two at %1</source>
            <translation>Medido como un tiro, partido en dos en %1</translation>
        </message>
        <message>
            <source>Measured as two shots, joined at %1</source>
            <translation>Medido como dos tiros, unidos en %1</translation>
        </message>
        <message>
            <source>This frame was put in by hand: its shots have no film by which to part or join them.</source>
            <translation>Esta partida se introdujo a mano: sus tiros no tienen video con el que partirlos o unirlos.</translation>
        </message>
        <message>
            <source>No shot follows in this frame, so there is nothing to join with.</source>
            <translation>En esta partida no sigue ningún tiro, así que no hay nada que unir.</translation>
        </message>
        <message>
            <source>This ball was not put down there any more; choose again.</source>
            <translation>Esa bola ya no consta como colocada ahí; elija de nuevo.</translation>
        </message>
    </context>
    <context>
        <name>CueSection</name>
        <message>
            <source>Cue pointed to</source>
            <translation>El taco apuntaba a</translation>
        </message>
        <message>
            <source>Ball went to</source>
            <translation>La bola salió a</translation>
        </message>
        <message>
            <source>Between them</source>
            <translation>Entre ambos</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Elevación</translation>
        </message>
        <message>
            <source>Tip, side</source>
            <translation>Ataque, lado</translation>
        </message>
        <message>
            <source>Tip, height</source>
            <translation>Ataque, altura</translation>
        </message>
        <message>
            <source>Sway of the aim</source>
            <translation>Oscilación</translation>
        </message>
        <message>
            <source>Tip speed</source>
            <translation>Velocidad de suela</translation>
        </message>
        <message>
            <source>Read from the tags on the cue.</source>
            <translation>Leído en las marcas del taco.</translation>
        </message>
        <message>
            <source>Read from the shaft over the cloth; its height is not seen.</source>
            <translation>Leído en la caña sobre el paño; su altura no se ve.</translation>
        </message>
        <message>
            <source>Between: + the ball went to the right of the cue's line.</source>
            <translation>Entre ambos: + la bola salió a la derecha de la línea del taco.</translation>
        </message>
        <message>
            <source>The tags on the cue were seen in too few images before the strike.</source>
            <translation>Las marcas del taco se vieron en muy pocas imágenes antes del golpe.</translation>
        </message>
        <message>
            <source>The pitch log has a gap before this strike; let the sensor write without a break.</source>
            <translation>El registro de inclinación tiene un hueco antes de este golpe; deje que el sensor escriba sin pausa.</translation>
        </message>
        <message>
            <source>The pitch log has another clock than the film and was left out; start both together.</source>
            <translation>El registro de inclinación tiene otro reloj que el video y no se usó; inicie ambos a la vez.</translation>
        </message>
        <message>
            <source>The tags are too small for this camera; it needs %1.</source>
            <translation>Las marcas son demasiado pequeñas para esta cámara; necesita %1.</translation>
        </message>
    </context>
    <context>
        <name>DrillCharts</name>
        <message>
            <source>Number of tries under each run; whiskers are 95 % intervals, hollow dots rest on too few.</source>
            <translation>Número de intentos bajo cada serie; las líneas son intervalos del 95 %, los puntos huecos se basan en muy pocos.</translation>
        </message>
    </context>
    <context>
        <name>DrillWords</name>
        <message>
            <source>Centre-line there and back</source>
            <translation>Línea central, ida y vuelta</translation>
        </message>
        <message>
            <source>The cue ball alone, from the head spot to the foot cushion and back over its start. Always off to one side: aim or unmeant side spin. Now left, now right: the stroke.</source>
            <translation>La blanca sola, del punto de cabecera a la banda de pie y de vuelta sobre su salida. Siempre hacia el mismo lado: puntería o efecto lateral involuntario. Ahora izquierda, ahora derecha: el golpe.</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>Escalera recta con blanca parada</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer. The cue ball stops within one ball's width of the contact. Stay on a rung until eight of ten succeed.</source>
            <translation>Bolas rectas desde cuatro distancias, cada una un paso más larga. La blanca se para a menos de una bola del contacto. Quédese en un peldaño hasta lograr ocho de diez.</translation>
        </message>
        <message>
            <source>Straight follow bands</source>
            <translation>Corrido recto por zonas</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball follows into the first, second or third band behind the contact. Say the band before the stroke.</source>
            <translation>Una bola recta; la blanca corre hasta la primera, segunda o tercera zona tras el contacto. Anuncie la zona antes del tiro.</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>Retroceso recto por zonas</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball comes back into the band that is called: stop, a quarter, a half or three quarters of the table's width.</source>
            <translation>Una bola recta; la blanca vuelve a la zona anunciada: parada, un cuarto, la mitad o tres cuartos de la anchura de la mesa.</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>Arrime a la banda de cabecera</translation>
        </message>
        <message>
            <source>From behind the head string to the foot cushion and back. The cue ball rests within half a diamond of the head cushion.</source>
            <translation>Desde detrás de la línea de cabecera a la banda de pie y de vuelta. La blanca queda a menos de medio diamante de la banda de cabecera.</translation>
        </message>
        <message>
            <source>Bare-table stop lines</source>
            <translation>Líneas de parada con la mesa vacía</translation>
        </message>
        <message>
            <source>The cue ball alone, to four lines in turn of distance: the middle, the foot cushion, the middle on the way back, and the head string's far side on the way back.</source>
            <translation>La blanca sola, hacia cuatro líneas cada vez más lejanas: el centro, la banda de pie, el centro a la vuelta y más allá de la línea de cabecera a la vuelta.</translation>
        </message>
        <message>
            <source>Object-ball pace to the rail</source>
            <translation>Ritmo de la bola objetivo a la banda</translation>
        </message>
        <message>
            <source>A full hit sends the object ball down the table; it rests within half a diamond of the foot cushion.</source>
            <translation>Un golpe lleno envía la bola objetivo al fondo; queda a menos de medio diamante de la banda de pie.</translation>
        </message>
        <message>
            <source>Cut fan</source>
            <translation>Abanico de cortes</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball half a table's width away: straight, then cuts of 15, 30, 45 and 60 degrees. Misses on one side at every angle are aim; thick at every angle is throw not allowed for.</source>
            <translation>La bola en el punto de pie, la blanca a media anchura de mesa: recta y luego cortes de 15, 30, 45 y 60 grados. Fallar hacia un lado en todos los ángulos es puntería; gruesa en todos es arrastre no previsto.</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>Cortes largos desde el punto de pie</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball behind the head string: long cuts of about 33, 47 and 60 degrees.</source>
            <translation>La bola en el punto de pie, la blanca tras la línea de cabecera: cortes largos de unos 33, 47 y 60 grados.</translation>
        </message>
        <message>
            <source>Rail-frozen ball cut</source>
            <translation>Bola pegada a la banda</translation>
        </message>
        <message>
            <source>The ball touches the long cushion; send it along the cushion into the corner. Watch whether ball or cushion is met first.</source>
            <translation>La bola toca la banda larga; envíela a lo largo de la banda a la esquina. Observe si se toca antes la bola o la banda.</translation>
        </message>
        <message>
            <source>Side-pocket pair</source>
            <translation>Pareja a la tronera lateral</translation>
        </message>
        <message>
            <source>One ball before the side pocket, cut from the head and from the foot. The pocket takes little at this angle: pace decides.</source>
            <translation>Una bola ante la tronera lateral, cortada desde la cabecera y desde el pie. La tronera admite poco con este ángulo: decide el ritmo.</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>Corte fino</translation>
        </message>
        <message>
            <source>A cut of about 65 degrees into the corner; the cue ball must stay on the table. Note which side the misses go to.</source>
            <translation>Un corte de unos 65 grados a la esquina; la blanca debe quedar en la mesa. Anote hacia qué lado van los fallos.</translation>
        </message>
        <message>
            <source>Stun to the mark</source>
            <translation>Blanca seca hasta la marca</translation>
        </message>
        <message>
            <source>A stun shot: the cue ball leaves along the tangent line and meets the long cushion in the marked piece. Short of it: draw; beyond it: follow.</source>
            <translation>Un tiro seco: la blanca sale por la tangente y toca la banda larga en el tramo marcado. Antes: retroceso; después: corrido.</translation>
        </message>
        <message>
            <source>Three-zone cue ball</source>
            <translation>Blanca en tres zonas</translation>
        </message>
        <message>
            <source>One pot, three places for the cue ball, called in turn. Pot and landing are counted apart and together.</source>
            <translation>Una bola, tres sitios para la blanca, anunciados por turno. La bola y la posición se cuentan por separado y juntas.</translation>
        </message>
        <message>
            <source>Row on the centre string</source>
            <translation>Fila en la línea central</translation>
        </message>
        <message>
            <source>Five balls in a row across the table, cue ball in hand. Pot all of them; the cue ball touches no cushion.</source>
            <translation>Cinco bolas en fila a lo ancho de la mesa, blanca en mano. Emboque todas; la blanca no toca ninguna banda.</translation>
        </message>
        <message>
            <source>Correct-side two-ball</source>
            <translation>Dos bolas, lado correcto</translation>
        </message>
        <message>
            <source>Pot the first ball and come to the right side of the second: a cut of 15 to 45 degrees from the foot half. Then pot it.</source>
            <translation>Emboque la primera bola y quede en el lado correcto de la segunda: un corte de 15 a 45 grados desde la mitad de pie. Luego embóquela.</translation>
        </message>
        <message>
            <source>Called three-ball pattern</source>
            <translation>Serie anunciada de tres bolas</translation>
        </message>
        <message>
            <source>Three balls spread out, cue ball in hand. Say order, pockets and landing places first, then play it as it was said.</source>
            <translation>Tres bolas dispersas, blanca en mano. Diga primero orden, troneras y posiciones; luego juéguelo así.</translation>
        </message>
        <message>
            <source>Cue ball on the rail</source>
            <translation>Blanca en la banda</translation>
        </message>
        <message>
            <source>The cue ball touches the cushion, so that only its top can be struck. A short stroke and a level cue pot more than force.</source>
            <translation>La blanca toca la banda y solo se puede golpear arriba. Un golpe corto con el taco nivelado emboca más que la fuerza.</translation>
        </message>
        <message>
            <source>Straight-back bank to the side</source>
            <translation>Banda recta a la lateral</translation>
        </message>
        <message>
            <source>The ball goes to the opposite long cushion and back into the side pocket. Note whether misses are long or short; pace changes the angle.</source>
            <translation>La bola va a la banda larga opuesta y vuelve a la tronera lateral. Anote si los fallos son largos o cortos; el ritmo cambia el ángulo.</translation>
        </message>
        <message>
            <source>One-rail kick</source>
            <translation>Una banda previa</translation>
        </message>
        <message>
            <source>A blocker stands in the straight line. Meet the ball by way of one cushion; better still, leave it hidden.</source>
            <translation>Una bola bloquea la línea recta. Toque la bola por una banda; mejor aún, déjela escondida.</translation>
        </message>
        <message>
            <source>Two-rail kick</source>
            <translation>Dos bandas previas</translation>
        </message>
        <message>
            <source>The same by way of two cushions. Any part of the ball counts.</source>
            <translation>Lo mismo por dos bandas. Cualquier toque cuenta.</translation>
        </message>
        <message>
            <source>Hide-behind safety</source>
            <translation>Defensa escondida</translation>
        </message>
        <message>
            <source>Meet the ball and bring the cue ball behind the two blockers, so that no straight way to the ball is left.</source>
            <translation>Toque la bola y lleve la blanca detrás de las dos bolas, de modo que no quede línea recta hacia ella.</translation>
        </message>
        <message>
            <source>Thin-hit distance safety</source>
            <translation>Defensa fina a distancia</translation>
        </message>
        <message>
            <source>A thin hit: the ball stays near the foot cushion, the cue ball comes back near the head cushion.</source>
            <translation>Un toque fino: la bola queda cerca de la banda de pie, la blanca vuelve cerca de la banda de cabecera.</translation>
        </message>
        <message>
            <source>Break control</source>
            <translation>Saque controlado</translation>
        </message>
        <message>
            <source>A full rack, always from the same place: pot a ball and leave the cue ball in the middle of the table.</source>
            <translation>Un triángulo completo, siempre desde el mismo sitio: emboque una bola y deje la blanca en el centro de la mesa.</translation>
        </message>
        <message>
            <source>Open-spread run</source>
            <translation>Serie abierta</translation>
        </message>
        <message>
            <source>Balls spread apart, none near a cushion, cue ball in hand: pot all of them in any order. The balls made before a miss are counted.</source>
            <translation>Bolas dispersas, ninguna cerca de una banda, blanca en mano: emboque todas en cualquier orden. Se cuentan las bolas antes de un fallo.</translation>
        </message>
        <message>
            <source>straight</source>
            <translation>recta</translation>
        </message>
        <message>
            <source>speed</source>
            <translation>velocidad</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>parada</translation>
        </message>
        <message>
            <source>follow</source>
            <translation>corrido</translation>
        </message>
        <message>
            <source>draw</source>
            <translation>retroceso</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>corte</translation>
        </message>
        <message>
            <source>aim</source>
            <translation>puntería</translation>
        </message>
        <message>
            <source>long</source>
            <translation>largo</translation>
        </message>
        <message>
            <source>rail</source>
            <translation>banda</translation>
        </message>
        <message>
            <source>side pocket</source>
            <translation>tronera lateral</translation>
        </message>
        <message>
            <source>position</source>
            <translation>posición</translation>
        </message>
        <message>
            <source>run</source>
            <translation>serie</translation>
        </message>
        <message>
            <source>bank</source>
            <translation>banda</translation>
        </message>
        <message>
            <source>kick</source>
            <translation>banda previa</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>defensa</translation>
        </message>
        <message>
            <source>break</source>
            <translation>saque</translation>
        </message>
        <message>
            <source>Jump shots: wear eye protection, keep the space around the table clear, and let nobody stand where the ball may fly.</source>
            <translation>Tiros con salto: lleve protección ocular, despeje el espacio alrededor de la mesa y que nadie esté donde pueda volar la bola.</translation>
        </message>
        <message>
            <source>Power breaks: balls may leave the table; nobody stands at the foot end, bystanders stay behind the player.</source>
            <translation>Saques fuertes: pueden saltar bolas de la mesa; nadie en el extremo de pie, el público tras el jugador.</translation>
        </message>
        <message>
            <source>cut %1 to the left</source>
            <translation>corte %1 a la izquierda</translation>
        </message>
        <message>
            <source>cut %1 to the right</source>
            <translation>corte %1 a la derecha</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>desde %1</translation>
        </message>
        <message>
            <source>zone at %1 diamonds along, %2 across</source>
            <translation>zona a %1 diamantes a lo largo, %2 a lo ancho</translation>
        </message>
        <message numerus="yes">
            <source>by way of %n cushion(s)</source>
            <translation>
                <numerusform>por %n banda</numerusform>
                <numerusform>por %n bandas</numerusform>
            </translation>
        </message>
        <message>
            <source>a ball falls</source>
            <translation>cae una bola</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>cae %1</translation>
        </message>
        <message numerus="yes">
            <source>%1 by way of %n cushion(s) to %2</source>
            <translation>
                <numerusform>%1 por %n banda a %2</numerusform>
                <numerusform>%1 por %n bandas a %2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>%1 rests in the zone</source>
            <translation>%1 queda en la zona</translation>
        </message>
        <message numerus="yes">
            <source>%1 is met by way of %n cushion(s)</source>
            <translation>
                <numerusform>%1 se toca por %n banda</numerusform>
                <numerusform>%1 se toca por %n bandas</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 is met first</source>
            <translation>%1 se toca primero</translation>
        </message>
        <message>
            <source>%1 is hidden from the cue ball</source>
            <translation>%1 queda escondida de la blanca</translation>
        </message>
        <message>
            <source>a cut of %1 to %2 is left on %3</source>
            <translation>queda un corte de %1 a %2 sobre %3</translation>
        </message>
        <message>
            <source>the cue ball meets the cushion at the mark</source>
            <translation>la blanca toca la banda en la marca</translation>
        </message>
        <message>
            <source>the cue ball comes back over its start</source>
            <translation>la blanca vuelve sobre su salida</translation>
        </message>
        <message>
            <source>every ball falls</source>
            <translation>caen todas las bolas</translation>
        </message>
        <message>
            <source>the cue ball touches no cushion</source>
            <translation>la blanca no toca ninguna banda</translation>
        </message>
        <message>
            <source>it went as it was called</source>
            <translation>salió como se anunció</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>dentro</translation>
        </message>
        <message>
            <source>%1 outside</source>
            <translation>%1 fuera</translation>
        </message>
        <message>
            <source>%1 open</source>
            <translation>%1 abiertos</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>corte %1</translation>
        </message>
        <message>
            <source>%1 mm off</source>
            <translation>a %1 mm</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s)</source>
            <translation>
                <numerusform>%n bola</numerusform>
                <numerusform>%n bolas</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: %2 diamonds along, %3 across</source>
            <translation>%1: %2 diamantes a lo largo, %3 a lo ancho</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>a %1 de la banda de cabecera</translation>
        </message>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>a %1 de la banda de pie</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>a %1 de la derecha</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>a %1 de la izquierda</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>ninguno aún</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>between %1 and %2 %</source>
            <translation>entre %1 y %2 %</translation>
        </message>
        <message>
            <source>%1, %2: not enough yet for a share</source>
            <translation>%1, %2: aún no basta para un porcentaje</translation>
        </message>
        <message>
            <source>%1: %2 %, %3</source>
            <translation>%1: %2 %, %3</translation>
        </message>
        <message>
            <source>One run more, and the two can be compared.</source>
            <translation>Una serie más y se podrán comparar las dos.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough yet to compare: at least %n try(s) in the last run and in those before.</source>
            <translation>
                <numerusform>Aún no basta para comparar: al menos %n intento en la última serie y en las anteriores.</numerusform>
                <numerusform>Aún no basta para comparar: al menos %n intentos en la última serie y en las anteriores.</numerusform>
            </translation>
        </message>
        <message>
            <source>between %1 and %2</source>
            <translation>entre %1 y %2</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): more than chance.</source>
            <translation>La última serie difiere de las anteriores en %1 puntos (%2): más que azar.</translation>
        </message>
        <message>
            <source>The last run is as good as those before.</source>
            <translation>La última serie es tan buena como las anteriores.</translation>
        </message>
        <message>
            <source>The drill has no set-up; add one.</source>
            <translation>El ejercicio no tiene colocación; añada una.</translation>
        </message>
        <message>
            <source>Nothing is asked; choose what a try is to bring about.</source>
            <translation>No se pide nada; elija qué debe lograr un intento.</translation>
        </message>
        <message>
            <source>The set-ups ask different things; give all of them the same kinds of goals.</source>
            <translation>Las colocaciones piden cosas distintas; déles a todas los mismos tipos de objetivo.</translation>
        </message>
        <message>
            <source>The number of tries must be from 1 to %1.</source>
            <translation>El número de intentos debe ser de 1 a %1.</translation>
        </message>
        <message>
            <source>%1 is asked for but does not lie on the table; put it there.</source>
            <translation>%1 se pide pero no está en la mesa; póngala.</translation>
        </message>
        <message>
            <source>A goal lacks its ball, pocket or zone; choose it.</source>
            <translation>A un objetivo le falta bola, tronera o zona; elíjala.</translation>
        </message>
        <message>
            <source>%1 lies there twice; take one away.</source>
            <translation>%1 está dos veces; quite una.</translation>
        </message>
        <message>
            <source>%1 lies off the playing surface; move it.</source>
            <translation>%1 está fuera de la superficie de juego; muévala.</translation>
        </message>
        <message>
            <source>%1 and %2 overlap; move one of them.</source>
            <translation>%1 y %2 se solapan; mueva una.</translation>
        </message>
        <message>
            <source>So many balls do not find room so far apart; ask for fewer or let them lie closer.</source>
            <translation>Tantas bolas no caben tan separadas; pida menos o acérquelas.</translation>
        </message>
        <message>
            <source>A zone lies beyond the cushions; move it.</source>
            <translation>Una zona queda más allá de las bandas; muévala.</translation>
        </message>
        <message>
            <source>%1 cannot be cut that thinly; move a ball or choose another pocket.</source>
            <translation>%1 no se puede cortar tan fina; mueva una bola o elija otra tronera.</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): may be chance.</source>
            <translation>La última serie difiere de las anteriores en %1 puntos (%2): puede ser azar.</translation>
        </message>
        <message>
            <source>So small a difference takes more tries to show than anyone plays.</source>
            <translation>Mostrar una diferencia tan pequeña exige más intentos de los que nadie juega.</translation>
        </message>
        <message>
            <source>About %1 tries before and as many after would tell.</source>
            <translation>Unos %1 intentos antes y otros tantos después lo dirían.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>in diamonds, in mm</comment>
            <translation>%1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>EraseWords</name>
        <message>
            <source>Sessions in which nobody else played</source>
            <translation>Sesiones en las que no jugó nadie más</translation>
        </message>
        <message>
            <source>Frames of these sessions</source>
            <translation>Partidas de estas sesiones</translation>
        </message>
        <message>
            <source>Placed balls of these sessions</source>
            <translation>Bolas colocadas de estas sesiones</translation>
        </message>
        <message>
            <source>Table fingerprints of these sessions</source>
            <translation>Huellas de mesa de estas sesiones</translation>
        </message>
        <message>
            <source>Seats in sessions with others</source>
            <translation>Puestos en sesiones con otros</translation>
        </message>
        <message>
            <source>Shots</source>
            <translation>Tiros</translation>
        </message>
        <message>
            <source>Places of balls</source>
            <translation>Lugares de bolas</translation>
        </message>
        <message>
            <source>Deliveries</source>
            <translation>Ejecuciones</translation>
        </message>
        <message>
            <source>Contacts and falls</source>
            <translation>Contactos y caídas</translation>
        </message>
        <message>
            <source>Pocketed balls</source>
            <translation>Bolas embocadas</translation>
        </message>
        <message>
            <source>Tracks</source>
            <translation>Trayectorias</translation>
        </message>
        <message>
            <source>Rulings</source>
            <translation>Decisiones</translation>
        </message>
        <message>
            <source>Suggestions</source>
            <translation>Sugerencias</translation>
        </message>
        <message>
            <source>Accounts of misses</source>
            <translation>Análisis de fallos</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>Correcciones</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notas</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Etiquetas</translation>
        </message>
        <message>
            <source>Lines of consent</source>
            <translation>Líneas de consentimiento</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Grupos</translation>
        </message>
        <message>
            <source>Sessions under way</source>
            <translation>Sesiones en curso</translation>
        </message>
        <message>
            <source>Notes about others that lose their author's name</source>
            <translation>Notas sobre otros que pierden el nombre de su autor</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose their author's name</source>
            <translation>Correcciones de tiros de otros que pierden el nombre de su autor</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose the name</source>
            <translation>Correcciones de tiros de otros que pierden el nombre</translation>
        </message>
        <message>
            <source>Rulings on others' shots that lose the name</source>
            <translation>Decisiones sobre tiros de otros que pierden el nombre</translation>
        </message>
        <message>
            <source>What goes with %1</source>
            <translation>Lo que se va con %1</translation>
        </message>
        <message>
            <source>The player's name, playing hand and whether a minor</source>
            <translation>El nombre del jugador, su mano de juego y si es menor</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Films: the files are yours and are deleted only when you ask for it</source>
            <translation>Vídeos: los archivos son suyos y solo se borran si usted lo pide</translation>
        </message>
        <message>
            <source>%1 (others play in it too: it stays in the record)</source>
            <translation>%1 (también juegan otros: queda en el registro)</translation>
        </message>
        <message>
            <source>%1 (the record forgets it)</source>
            <translation>%1 (el registro la olvida)</translation>
        </message>
        <message>
            <source>Texts of others with the name, which is taken out</source>
            <translation>Textos de otros con el nombre, que se quita</translation>
        </message>
        <message>
            <source>"%1" becomes "%2"</source>
            <translation>«%1» pasa a «%2»</translation>
        </message>
        <message>
            <source>Older copies beside the record that hold the name</source>
            <translation>Copias anteriores junto al registro que contienen el nombre</translation>
        </message>
        <message>
            <source>What stays</source>
            <translation>Lo que queda</translation>
        </message>
        <message>
            <source>Others' shots in sessions with this player: %1, with %2 places of balls, which name nobody</source>
            <translation>Tiros de otros en sesiones con este jugador: %1, con %2 lugares de bolas, que no nombran a nadie</translation>
        </message>
        <message>
            <source>Consents of others that name this person as giver or writer, as evidence: %1</source>
            <translation>Consentimientos de otros que nombran a esta persona como quien los dio o anotó, como prueba: %1</translation>
        </message>
        <message>
            <source>A random number without a name, so that no merge brings the player back</source>
            <translation>Un número al azar sin nombre, para que ninguna fusión traiga de vuelta al jugador</translation>
        </message>
        <message>
            <source>Reports, exports and copies that were made of the record elsewhere</source>
            <translation>Informes, exportaciones y copias del registro hechos en otra parte</translation>
        </message>
        <message>
            <source>%1 was deleted.</source>
            <translation>%1 se borró.</translation>
        </message>
        <message>
            <source>%1 was not there any more.</source>
            <translation>%1 ya no estaba.</translation>
        </message>
        <message>
            <source>%1 is another file by now and was left alone.</source>
            <translation>%1 es ahora otro archivo y se dejó como estaba.</translation>
        </message>
        <message>
            <source>%1 could not be deleted (%2); delete it yourself.</source>
            <translation>%1 no se pudo borrar (%2); bórrelo usted.</translation>
        </message>
        <message>
            <source>The record's file could not be written anew, because another program uses it or the disk is full: old pages may still hold the name. Close the other programs and run "ferrule erase --compact" with the same name.</source>
            <translation>El archivo del registro no se pudo escribir de nuevo, porque otro programa lo usa o el disco está lleno: páginas antiguas pueden contener aún el nombre. Cierre los otros programas y ejecute «ferrule erase --compact» con el mismo nombre.</translation>
        </message>
        <message>
            <source>The name is nowhere in the record's files any more.</source>
            <translation>El nombre ya no figura en ninguna parte de los archivos del registro.</translation>
        </message>
        <message>
            <source>The name, or its letters within other words, still stands in the record's files: %1 times.</source>
            <translation>El nombre, o sus letras dentro de otras palabras, figura aún en los archivos del registro: %1 veces.</translation>
        </message>
        <message>
            <source>%1 was erased.</source>
            <translation>%1 fue borrado.</translation>
        </message>
        <message>
            <source>Runs of drills</source>
            <translation>Series de ejercicios</translation>
        </message>
        <message>
            <source>Tries in these runs</source>
            <translation>Intentos de estas series</translation>
        </message>
    </context>
    <context>
        <name>ErrorSentence</name>
        <message>
            <source>%1 is a folder; choose a file in it.</source>
            <translation>%1 es una carpeta; elija un archivo de ella.</translation>
        </message>
        <message>
            <source>%1 cannot be read (%2); check its permissions.</source>
            <translation>%1 no se puede leer (%2); compruebe sus permisos.</translation>
        </message>
        <message>
            <source>%1 has an unusable value for "%2"; correct it.</source>
            <translation>%1 tiene un valor inservible para «%2»; corríjalo.</translation>
        </message>
        <message>
            <source>%1 gives %3 for "%2", outside %4 to %5; measure it again.</source>
            <translation>%1 da %3 para «%2», fuera de %4 a %5; mídalo otra vez.</translation>
        </message>
        <message>
            <source>%1 is %2 but %3 was made at %4; calibrate the rig on a film of this size.</source>
            <translation>%1 mide %2, pero %3 se hizo con %4; calcule el montaje con un video de este tamaño.</translation>
        </message>
        <message>
            <source>%1 is %2 but the lens %3 was made at %4, another shape of picture; calibrate the lens in the film's mode.</source>
            <translation>%1 mide %2, pero la lente %3 se hizo con %4, otra proporción de imagen; calibre la lente en el modo del video.</translation>
        </message>
        <message>
            <source>The board "%1" needs 3 to 100 columns and rows, such as 9x6; count them on the print.</source>
            <translation>El tablero «%1» necesita de 3 a 100 columnas y filas, por ejemplo 9x6; cuéntelas en la hoja impresa.</translation>
        </message>
        <message>
            <source>The board "%1" needs its square's side in millimetres, 1 to 1000; measure it on the print.</source>
            <translation>El tablero «%1» necesita el lado de su cuadro en milímetros, de 1 a 1000; mídalo en la hoja impresa.</translation>
        </message>
        <message>
            <source>The board "%1" needs its marker's side in millimetres, smaller than the square; measure it on the print.</source>
            <translation>El tablero «%1» necesita el lado de su marcador en milímetros, menor que el cuadro; mídalo en la hoja impresa.</translation>
        </message>
        <message>
            <source>The board "%1" names an unknown set of markers; use the name it was printed with, such as DICT_5X5_100.</source>
            <translation>El tablero «%1» nombra un juego de marcadores desconocido; use el nombre con que se imprimió, por ejemplo DICT_5X5_100.</translation>
        </message>
        <message>
            <source>The board "%1" has more squares than its set of markers can fill; check the counts or name a larger set.</source>
            <translation>El tablero «%1» tiene más cuadros de los que llena su juego de marcadores; compruebe las cantidades o nombre un juego mayor.</translation>
        </message>
        <message>
            <source>"%1" does not fit on this paper with its margins; choose larger paper or smaller squares.</source>
            <translation>«%1» no cabe en este papel con sus márgenes; elija un papel mayor o cuadros menores.</translation>
        </message>
        <message>
            <source>The printer drew the board "%1" %2 mm across and %3 mm down where both should be equal; print it again without fitting it to the page.</source>
            <translation>La impresora dibujó el tablero «%1» con %2 mm a lo ancho y %3 mm a lo alto, y ambos deberían ser iguales; imprímalo otra vez sin ajustarlo a la página.</translation>
        </message>
        <message>
            <source>The board "%1" is not in the form chessboard:9x6:25 or charuco:8x6:40:30:DICT_5X5_100; write it so.</source>
            <translation>El tablero «%1» no tiene la forma chessboard:9x6:25 o charuco:8x6:40:30:DICT_5X5_100; escríbalo así.</translation>
        </message>
        <message>
            <source>(%1 % of the cells there, %2 % are needed); add stills with the board there.</source>
            <translation>(%1 % de las celdas de allí; hace falta el %2 %); añada fotos con el tablero en esa parte.</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the left of the picture %2</source>
            <translation>Las fotos de %1 apenas muestran el tablero a la izquierda de la imagen %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the right of the picture %2</source>
            <translation>Las fotos de %1 apenas muestran el tablero a la derecha de la imagen %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the top of the picture %2</source>
            <translation>Las fotos de %1 apenas muestran el tablero arriba en la imagen %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the bottom of the picture %2</source>
            <translation>Las fotos de %1 apenas muestran el tablero abajo en la imagen %2</translation>
        </message>
        <message>
            <source>The stills of %1 show the board in too little of the picture (%2 %, %3 % are needed); add stills with the board in the empty parts.</source>
            <translation>Las fotos de %1 muestran el tablero en muy poca parte de la imagen (%2 %; hace falta el %3 %); añada fotos con el tablero en las partes vacías.</translation>
        </message>
        <message>
            <source>The cushions in %1 fit no camera over this table; check the table's size in the table file.</source>
            <translation>Las bandas de %1 no corresponden a ninguna cámara sobre esta mesa; compruebe el tamaño de la mesa en el archivo de mesa.</translation>
        </message>
        <message>
            <source>No lens explains the stills of %1; check the board's counts and take stills with the board tilted.</source>
            <translation>Ninguna lente explica las fotos de %1; compruebe las cantidades del tablero y tome fotos con el tablero inclinado.</translation>
        </message>
        <message>
            <source>The stills of %1 do not fix the lens out to the corners of the picture; add stills with the board in the corners.</source>
            <translation>Las fotos de %1 no fijan la lente hasta las esquinas de la imagen; añada fotos con el tablero en las esquinas.</translation>
        </message>
        <message>
            <source>%1 holds a lens that cannot be used (%2); calibrate it again.</source>
            <translation>%1 contiene una lente que no se puede usar (%2); calíbrela otra vez.</translation>
        </message>
        <message>
            <source>%1 lists %2 tags and %3 are needed; measure the tags into a table file, or set up from the table itself.</source>
            <translation>%1 enumera %2 marcas y hacen falta %3; mida las marcas y anótelas en un archivo de mesa, o configure a partir de la propia mesa.</translation>
        </message>
        <message>
            <source>%1 shows the noses of %2 cushions, and every side of the table is needed; film the whole table from above, in even light, without people before it.</source>
            <translation>%1 muestra las narices de %2 bandas y hacen falta todos los lados de la mesa; grabe la mesa entera desde arriba, con luz uniforme y sin personas delante.</translation>
        </message>
        <message>
            <source>%1 shows %2 of the projected tags on the cloth and %3 are needed; darken the room, clear the table, and let the projector's picture cover most of it.</source>
            <translation>%1 muestra %2 de las marcas proyectadas en el paño y hacen falta %3; oscurezca la sala, despeje la mesa y haga que la imagen del proyector cubra casi toda la mesa.</translation>
        </message>
        <message>
            <source>%1 shows %2 of the table's tags and %3 are needed; uncover or light them, and check the set of markers in the table file.</source>
            <translation>%1 muestra %2 de las marcas de la mesa y hacen falta %3; destápelas o ilumínelas, y compruebe el juego de marcadores en el archivo de mesa.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 twice; cover or remove one of them.</source>
            <translation>%1 muestra dos veces la marca %2; tape o quite una de ellas.</translation>
        </message>
        <message>
            <source>%1 shows the projected tag %2 twice; switch off the second projector or the other grid.</source>
            <translation>%1 muestra dos veces la marca proyectada %2; apague el segundo proyector o la otra cuadrícula.</translation>
        </message>
        <message>
            <source>The projected tags in %1 do not lie as one picture on a flat cloth (%2 mm off); check that the grid file belongs to the picture that was sent, and that camera and projector stood still.</source>
            <translation>Las marcas proyectadas de %1 no forman una sola imagen sobre un paño plano (%2 mm de diferencia); compruebe que el archivo de la cuadrícula corresponde a la imagen enviada y que la cámara y el proyector no se movieron.</translation>
        </message>
        <message>
            <source>%1 shows tags %2 and %3 in each other's place; swap them, or correct the table file.</source>
            <translation>%1 muestra las marcas %2 y %3 una en el lugar de la otra; intercámbielas o corrija el archivo de mesa.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 turned by %3 degrees from what the table file says; turn it, or correct the file.</source>
            <translation>%1 muestra la marca %2 girada %3 grados respecto de lo que dice el archivo de mesa; gírela o corrija el archivo.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 about %3 mm from where the table file says; measure it again, and check that the lens belongs to this camera.</source>
            <translation>%1 muestra la marca %2 a unos %3 mm de donde dice el archivo de mesa; mídala otra vez y compruebe que la lente es de esta cámara.</translation>
        </message>
        <message>
            <source>%1 shows tags that fit no camera position; check the table file and the lens.</source>
            <translation>%1 muestra marcas que no corresponden a ninguna posición de la cámara; compruebe el archivo de mesa y la lente.</translation>
        </message>
        <message>
            <source>the turn of the picture</source>
            <translation>el giro de la imagen</translation>
        </message>
        <message>
            <source>the image size</source>
            <translation>el tamaño de la imagen</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>la lente</translation>
        </message>
        <message>
            <source>the camera's place</source>
            <translation>el lugar de la cámara</translation>
        </message>
        <message>
            <source>There is no file %1; check the path.</source>
            <translation>No existe el archivo %1; compruebe la ruta.</translation>
        </message>
        <message>
            <source>%1 is empty; copy or export it again.</source>
            <translation>%1 está vacío; cópielo o expórtelo otra vez.</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another folder.</source>
            <translation>%1 no se puede escribir (%2); elija otra carpeta.</translation>
        </message>
        <message>
            <source>%1 is not in the expected form (%2); make it again or correct it.</source>
            <translation>%1 no tiene la forma esperada (%2); hágalo otra vez o corríjalo.</translation>
        </message>
        <message>
            <source>%1 has no value for "%2"; add it.</source>
            <translation>%1 no tiene valor para «%2»; añádalo.</translation>
        </message>
        <message>
            <source>%1 is not a film that can be read; export it again as MP4 or MKV.</source>
            <translation>%1 no es un video que se pueda leer; expórtelo otra vez como MP4 o MKV.</translation>
        </message>
        <message>
            <source>%1 holds sound but no picture; choose the film itself.</source>
            <translation>%1 contiene sonido pero no imagen; elija el propio video.</translation>
        </message>
        <message>
            <source>%1 breaks off before its first whole image; copy it from the camera again.</source>
            <translation>%1 se corta antes de su primer fotograma entero; cópielo otra vez de la cámara.</translation>
        </message>
        <message>
            <source>%1 is not a picture that can be read; leave it out or export it again as JPEG or PNG.</source>
            <translation>%1 no es una imagen que se pueda leer; déjela fuera o expórtela otra vez como JPEG o PNG.</translation>
        </message>
        <message>
            <source>%1 is %2 while the stills before it are %3; use stills of one camera at one size.</source>
            <translation>%1 mide %2 y las fotos anteriores %3; use fotos de una sola cámara y de un solo tamaño.</translation>
        </message>
        <message>
            <source>Every still that shows the board "%1" is blurred; focus, expose shorter or put the board down, and take them again.</source>
            <translation>Todas las fotos que muestran el tablero «%1» están borrosas; enfoque, exponga menos tiempo o apoye el tablero, y tómelas otra vez.</translation>
        </message>
        <message>
            <source>None of %2 stills shows the whole board "%1"; check its counts and keep it flat, sharp and in the picture.</source>
            <translation>Ninguna de %2 fotos muestra entero el tablero «%1»; compruebe sus cantidades y manténgalo plano, nítido y dentro de la imagen.</translation>
        </message>
        <message>
            <source>The stills show the board "%1" in the old layout, with the markers on the other squares; print it again, or use one with an odd number of rows.</source>
            <translation>Las fotos muestran el tablero «%1» con el diseño antiguo, con los marcadores en los otros cuadros; imprímalo otra vez o use uno con un número impar de filas.</translation>
        </message>
        <message>
            <source>The grid in %1 is mirrored; switch off the projector's mirror or rear setting.</source>
            <translation>La cuadrícula de %1 está invertida en espejo; desactive el modo espejo o de retroproyección del proyector.</translation>
        </message>
        <message>
            <source>%1 is mirrored; switch off the mirror setting of the camera and film again.</source>
            <translation>%1 está invertido en espejo; desactive el modo espejo de la cámara y grabe de nuevo.</translation>
        </message>
        <message>
            <source>Only %2 stills show the board %1 well enough and %3 are needed; take more.</source>
            <translation>Solo %2 fotos muestran bien el tablero %1 y hacen falta %3; tome más.</translation>
        </message>
        <message>
            <source>%1 corrects %2 twice; make the rig again from the film and the lens as they came.</source>
            <translation>%1 corrige dos veces %2; calcule de nuevo el montaje con el video y la lente sin modificar.</translation>
        </message>
        <message>
            <source>No balls were found in %1; check that the rig and the table file belong to this film.</source>
            <translation>No se encontraron bolas en %1; compruebe que el montaje y el archivo de mesa corresponden a este video.</translation>
        </message>
        <message>
            <source>%1 is in use by another program; close it there and try again.</source>
            <translation>Otro programa está usando %1; ciérrelo allí e inténtelo otra vez.</translation>
        </message>
        <message>
            <source>%1 may only be read; copy it to a folder of your own.</source>
            <translation>%1 es de solo lectura; cópielo a una carpeta propia.</translation>
        </message>
        <message>
            <source>%1 may only be read (%2); copy it to a folder of your own.</source>
            <translation>%1 es de solo lectura (%2); cópielo a una carpeta propia.</translation>
        </message>
        <message>
            <source>%1 was written by a later version (form %2, this one knows %3); update this program.</source>
            <translation>%1 se escribió con una versión posterior (formato %2; esta conoce el %3); actualice este programa.</translation>
        </message>
        <message>
            <source>%1 is not a record; choose another file.</source>
            <translation>%1 no es un registro; elija otro archivo.</translation>
        </message>
        <message>
            <source>%1 is not a record (%2); choose another file.</source>
            <translation>%1 no es un registro (%2); elija otro archivo.</translation>
        </message>
        <message>
            <source>There is no room left to write %1; free some disk space. Nothing that was saved is lost.</source>
            <translation>No queda espacio para escribir %1; libere espacio en el disco. No se ha perdido nada de lo guardado.</translation>
        </message>
        <message>
            <source>%1 is damaged (%2); open the newest backup beside it.</source>
            <translation>%1 está dañado (%2); abra la copia de seguridad más reciente que está junto a él.</translation>
        </message>
        <message>
            <source>%1 is already in the record; choose another name.</source>
            <translation>%1 ya está en el registro; elija otro nombre.</translation>
        </message>
        <message>
            <source>%1 is already in the record as session "%2"; add --again to measure it once more beside it.</source>
            <translation>%1 ya está en el registro como sesión «%2»; añada --again para medirlo otra vez aparte.</translation>
        </message>
        <message>
            <source>%1 leaves no legal shot: no ball that may be played is on the table or can be reached; check the balls, the game and the group.</source>
            <translation>%1 no deja ningún tiro legal: ninguna bola que se pueda jugar está en la mesa o es alcanzable; compruebe las bolas, la modalidad y el grupo.</translation>
        </message>
        <message>
            <source>There is no %1 in %2; check the spelling.</source>
            <translation>No hay %1 en %2; compruebe cómo está escrito.</translation>
        </message>
        <message>
            <source>%1 strikes the ball %2 radii from its centre, past the miscue limit of %3; move the tip point inward.</source>
            <translation>%1 golpea la bola a %2 radios de su centro, más allá del límite de pifia de %3; acerque el punto de ataque al centro.</translation>
        </message>
        <message>
            <source>%1 has the balls %2 overlapping by %3 mm, more than %4; correct their places.</source>
            <translation>En %1 las bolas %2 se solapan %3 mm, más de %4; corrija sus lugares.</translation>
        </message>
        <message>
            <source>%1 has the ball %2 outside the table; correct its place.</source>
            <translation>En %1 la bola %2 está fuera de la mesa; corrija su lugar.</translation>
        </message>
        <message>
            <source>Stopped before the end; what was recorded until then is kept.</source>
            <translation>Detenido antes del final; lo registrado hasta entonces se conserva.</translation>
        </message>
    </context>
    <context>
        <name>FigureWords</name>
        <message>
            <source>not enough yet: two sessions with %1 or more are needed</source>
            <translation>aún no basta: hacen falta dos sesiones de %1 o más</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>Dispersión de la puntería</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>Dispersión de la velocidad en posiciones repetidas</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>Dispersión de la velocidad</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>Tiros en la diana</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>Mapa de fallos</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>De qué lado se falla</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>Embocadas por tronera</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>Velocidad pedida y ejecutada</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>Dónde se detuvo la blanca</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>Dónde tocó la suela la bola</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>Tiros parecidos en otras condiciones</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>Ejercicio: %1</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>Ejercicio</translation>
        </message>
        <message>
            <source>no run of a drill in this selection</source>
            <translation>ninguna serie de un ejercicio en esta selección</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Elección y ejecución</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>Posición para la bola siguiente</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>Probabilidades indicadas y cumplidas</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>El juego</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>Defensas y lo que vino después</translation>
        </message>
        <message>
            <source>no safety in this selection</source>
            <translation>ninguna defensa en esta selección</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>Embocadas según la entrada en la tronera</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>Embocadas, por corte y distancia de la blanca</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>Embocadas, por corte y distancia a la tronera</translation>
        </message>
    </context>
    <context>
        <name>FilmWords</name>
        <message>
            <source>No film is kept: the consent of %1 to being filmed has run out; note a new one in Players.</source>
            <translation>No se guarda ningún video: el consentimiento de %1 para ser filmado ha vencido; anote uno nuevo en Jugadores.</translation>
        </message>
        <message>
            <source>No film is kept: %1 has withdrawn the consent to being filmed.</source>
            <translation>No se guarda ningún video: %1 ha retirado el consentimiento para ser filmado.</translation>
        </message>
        <message>
            <source>No film is kept: for %1, a minor, a guardian must consent; note it in Players.</source>
            <translation>No se guarda ningún video: por %1, menor, debe consentir un tutor; anótelo en Jugadores.</translation>
        </message>
        <message>
            <source>No film is kept: no consent of %1 to being filmed is noted in Players.</source>
            <translation>No se guarda ningún video: en Jugadores no consta el consentimiento de %1 para ser filmado.</translation>
        </message>
        <message>
            <source>No film is kept: name those who play, so that their consent can be looked up.</source>
            <translation>No se guarda ningún video: nombre a quienes juegan, para poder consultar su consentimiento.</translation>
        </message>
        <message>
            <source>No film is kept: these players' consents to being filmed are missing or no longer hold: %1.</source>
            <translation>No se guarda ningún video: el consentimiento de estos jugadores falta o ya no vale: %1.</translation>
        </message>
        <message>
            <source>No film is kept: %1</source>
            <comment>a sentence</comment>
            <translation>No se guarda ningún video: %1</translation>
        </message>
        <message>
            <source>The film ended after %1 images: the disk has no room for more. Measuring goes on.</source>
            <translation>El video terminó tras %1 imágenes: no queda sitio en el disco. La medición sigue.</translation>
        </message>
        <message>
            <source>Filming: %1 images, none dropped</source>
            <translation>Grabando: %1 imágenes, ninguna perdida</translation>
        </message>
        <message>
            <source>Filming: %1 images, %2 dropped</source>
            <translation>Grabando: %1 imágenes, %2 perdidas</translation>
        </message>
    </context>
    <context>
        <name>FirstPage</name>
        <message>
            <source>There is no shot of this player in this period, so there is nothing to report. Choose another period, or measure a film first.</source>
            <translation>No hay ningún tiro de este jugador en este periodo, así que no hay nada que informar. Elija otro periodo, o mida antes un video.</translation>
        </message>
        <message>
            <source>In short</source>
            <translation>En pocas palabras</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>del %1 al %2</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>desde el %1</translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>hasta el %1</translation>
        </message>
        <message>
            <source>the whole record</source>
            <translation>todo el registro</translation>
        </message>
        <message>
            <source>Progress report</source>
            <translation>Informe de progreso</translation>
        </message>
        <message>
            <source>%1 hours</source>
            <translation>%1 horas</translation>
        </message>
        <message>
            <source>How many balls go in cannot be said yet (%1).</source>
            <translation>Aún no se puede decir cuántas bolas entran (%1).</translation>
        </message>
        <message>
            <source>Whether anything changed cannot be said yet: that takes at least %1 with enough shots.</source>
            <translation>Aún no se puede decir si algo ha cambiado: para eso hacen falta al menos %1 con tiros suficientes.</translation>
        </message>
        <message>
            <source>Over these weeks nothing changed by more than luck alone would bring about. That is usual for so short a time and no verdict on the practice.</source>
            <translation>En estas semanas nada ha cambiado más de lo que haría el azar por sí solo. Es lo normal en tan poco tiempo y no es un juicio sobre el entrenamiento.</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>Aún no hay datos suficientes para decir qué conviene trabajar primero; cada sesión más ayuda.</translation>
        </message>
        <message>
            <source>To work on first: %1. The drill is “%2”.</source>
            <translation>Lo primero que conviene trabajar: %1. El ejercicio es «%2».</translation>
        </message>
        <message>
            <source>What we can be sure of</source>
            <translation>De qué podemos estar seguros</translation>
        </message>
        <message>
            <source>Nothing stands out beyond luck in this period.</source>
            <translation>En este periodo nada destaca más que el azar.</translation>
        </message>
        <message>
            <source>Also looked at, and no more than luck: %1.</source>
            <translation>También se ha mirado, y no es más que azar: %1.</translation>
        </message>
        <message>
            <source>Not enough shots or sessions yet: %1.</source>
            <translation>Aún no hay tiros o sesiones suficientes: %1.</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>Qué conviene trabajar</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>Drill: %1. %2</source>
            <translation>Ejercicio: %1. %2</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>Este punto y el siguiente valen más o menos lo mismo; empiece por el que quiera.</translation>
        </message>
        <message>
            <source>The order is by frames won: the player's own shots are played again in the simulator, with one part of the scatter a fifth smaller. A simulation is a guide, not a promise.</source>
            <translation>El orden es por partidas ganadas: los propios tiros del jugador se juegan otra vez en el simulador, con una parte de la dispersión reducida en una quinta parte. Una simulación orienta, no promete.</translation>
        </message>
        <message>
            <source>The order comes from a simple rule: the lines on which the balls ran are judged again with one cause taken away. Position, speed and choice of shot are not judged by it.</source>
            <translation>El orden sale de una regla sencilla: las líneas que siguieron las bolas se juzgan otra vez quitando una de las causas. No juzga la posición, ni la velocidad, ni la elección del tiro.</translation>
        </message>
        <message>
            <source>How far to trust this</source>
            <translation>Hasta dónde fiarse de esto</translation>
        </message>
        <message>
            <source>Every one of these shots was corrected by a person; nothing rests on the camera alone.</source>
            <translation>Cada uno de estos tiros lo corrigió una persona; nada depende solo de la cámara.</translation>
        </message>
        <message>
            <source>Still waiting for a person's word: %1.</source>
            <translation>Aún a la espera de lo que diga una persona: %1.</translation>
        </message>
        <message>
            <source>The pocket was named by a person for %1 pots and read from the balls for %2; the two are not mixed.</source>
            <translation>En %1 intentos la tronera la nombró una persona y en %2 se dedujo de las bolas; no se mezclan.</translation>
        </message>
        <message>
            <source>Left out: %1 on the table “%2”, whose pockets are of another width (%3 mm at the corners).</source>
            <translation>Sin contar: %1 en la mesa «%2», cuyas troneras tienen otra anchura (%3 mm en las esquinas).</translation>
        </message>
        <message>
            <source>Dated in the future: %1; set the clock of the camera or computer.</source>
            <translation>Con fecha futura: %1; ponga en hora el reloj de la cámara o del equipo.</translation>
        </message>
        <message>
            <source>A clock went back during a session (%1); times within sessions are doubtful.</source>
            <translation>Un reloj retrocedió durante una sesión (%1); las horas dentro de las sesiones son dudosas.</translation>
        </message>
        <message>
            <source>For %1 the time within the session is unknown.</source>
            <translation>Sin hora conocida dentro de la sesión: %1.</translation>
        </message>
        <message>
            <source>The coach's note</source>
            <translation>Nota del entrenador</translation>
        </message>
        <message>
            <source>met</source>
            <translation>cumplido</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>aún no</translation>
        </message>
        <message>
            <source>not tried since</source>
            <translation>no intentado desde entonces</translation>
        </message>
        <message>
            <source>%1; now %2</source>
            <comment>met or not yet, spread</comment>
            <translation>%1; ahora %2</translation>
        </message>
        <message>
            <source>%1; since then %2 of %3 (between %4)</source>
            <comment>met or not yet, tries that met it, tries, interval</comment>
            <translation>%1; desde entonces %2 de %3 (entre %4)</translation>
        </message>
        <message>
            <source>Targets of the time before</source>
            <translation>Objetivos del tiempo anterior</translation>
        </message>
        <message>
            <source>%1 of %2 at “%3”</source>
            <translation>%1 de %2 en «%3»</translation>
        </message>
        <message>
            <source>scatter of %1 or less</source>
            <translation>dispersión de %1 o menos</translation>
        </message>
        <message>
            <source>The targets are those that a report on the first day of this period would have set.</source>
            <translation>Los objetivos son los que un informe del primer día de este período habría fijado.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a count, its share</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Shots whose stroke was measured: %1. Not seen well enough: %2. Corrected by a person: %3.</source>
            <comment>each a count and its share</comment>
            <translation>Tiros medidos: %1. No se vieron bastante bien: %2. Corregidos por una persona: %3.</translation>
        </message>
        <message>
            <source>Many shots were corrected by a person; look at the camera before the next session.</source>
            <translation>Una persona corrigió muchos tiros; revise la cámara antes de la próxima sesión.</translation>
        </message>
        <message>
            <source>No consent is recorded for: %1.</source>
            <translation>No consta consentimiento para: %1.</translation>
        </message>
        <message>
            <source>What the record knew of consent on %1:</source>
            <translation>Consentimientos que constaban el %1:</translation>
        </message>
        <message>
            <source>Of every 100 balls that were tried, about %1 went in. Luck and good and bad days allowed for, the true number very probably lies between %2 and %3.</source>
            <translation>De cada 100 bolas intentadas entraron unas %1. Teniendo en cuenta el azar y los días buenos y malos, el número real está muy probablemente entre %2 y %3.</translation>
        </message>
    </context>
    <context>
        <name>Joining</name>
        <message>
            <source>%1, %2</source>
            <comment>two of a list</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>two of a list whose parts hold commas</comment>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a name and what is told of it</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>two sentences</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1.</source>
            <comment>the stop at the end of a sentence</comment>
            <translation>%1.</translation>
        </message>
    </context>
    <context>
        <name>JudgementSection</name>
        <message>
            <source>Shot</source>
            <translation>Tiro</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>Embocar</translation>
        </message>
        <message>
            <source>Foul</source>
            <translation>Falta</translation>
        </message>
        <message>
            <source>Worth</source>
            <comment>of a shot, in hundredths of a frame</comment>
            <translation>Valor</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Dirección</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Velocidad</translation>
        </message>
        <message>
            <source>Side / height, R</source>
            <translation>Lado / altura, R</translation>
        </message>
        <message>
            <source>The suggestion had been shown before the shot.</source>
            <translation>La sugerencia se había mostrado antes del tiro.</translation>
        </message>
        <message>
            <source>Squirt</source>
            <translation>Deflexión</translation>
        </message>
        <message>
            <source>Swerve</source>
            <translation>Curva</translation>
        </message>
        <message>
            <source>Throw of the cut</source>
            <translation>Desvío por corte</translation>
        </message>
        <message>
            <source>Throw of the spin</source>
            <translation>Desvío por efecto</translation>
        </message>
        <message>
            <source>Unexplained</source>
            <translation>Sin explicar</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>En total</translation>
        </message>
    </context>
    <context>
        <name>JudgementSentence</name>
        <message>
            <source>what came out was %1 in 100 better than the shot is worth</source>
            <translation>lo que salió valió %1 de cada 100 más que el tiro</translation>
        </message>
        <message>
            <source>delivery cost %1 in 100</source>
            <translation>la ejecución costó %1 de cada 100</translation>
        </message>
        <message>
            <source>The choice cost nothing that can be told</source>
            <translation>La elección no costó nada apreciable</translation>
        </message>
        <message>
            <source>The choice gained %1 in 100</source>
            <translation>La elección ganó %1 de cada 100</translation>
        </message>
        <message>
            <source>The choice cost %1 in 100</source>
            <translation>La elección costó %1 de cada 100</translation>
        </message>
        <message>
            <source>No game is known for this shot, so that no plan can be set beside it.</source>
            <translation>No se conoce la modalidad de este tiro, así que no se puede comparar con ningún plan.</translation>
        </message>
        <message>
            <source>The frame was over.</source>
            <translation>La partida había terminado.</translation>
        </message>
        <message>
            <source>Where the cue ball lay before the shot is not known.</source>
            <translation>No se sabe dónde estaba la blanca antes del tiro.</translation>
        </message>
        <message>
            <source>No legal shot was found from this position.</source>
            <translation>No se encontró ningún tiro legal desde esta posición.</translation>
        </message>
        <message>
            <source>%1; %2.</source>
            <comment>what the choice cost; what the delivery cost</comment>
            <translation>%1; %2.</translation>
        </message>
        <message>
            <source>Suggested: %1. What was taken could not be matched to a plan.</source>
            <translation>Sugerido: %1. Lo jugado no se pudo asociar a ningún plan.</translation>
        </message>
    </context>
    <context>
        <name>LiveWords</name>
        <message>
            <source>Waiting for the first image</source>
            <translation>Esperando la primera imagen</translation>
        </message>
        <message>
            <source>What was seen is measured to its end</source>
            <translation>Lo visto se mide hasta el final</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand in the record</source>
            <translation>
                <numerusform>%n tiro queda en el registro</numerusform>
                <numerusform>%n tiros quedan en el registro</numerusform>
            </translation>
        </message>
        <message>
            <source>Practice without a referee</source>
            <translation>Práctica sin árbitro</translation>
        </message>
        <message>
            <source>Waiting for the first shot</source>
            <translation>Esperando el primer tiro</translation>
        </message>
        <message>
            <source>%1, as far as anyone knows</source>
            <comment>whose turn it is</comment>
            <translation>%1, hasta donde se sabe</translation>
        </message>
        <message>
            <source>Frames: %1 %2, %3 %4</source>
            <comment>name, frames, name, frames</comment>
            <translation>Partidas: %1 %2, %3 %4</translation>
        </message>
        <message>
            <source>%1 images</source>
            <comment>a number that grows</comment>
            <translation>%1 imágenes</translation>
        </message>
        <message>
            <source>none dropped</source>
            <translation>ninguna perdida</translation>
        </message>
        <message numerus="yes">
            <source>%n dropped</source>
            <translation>
                <numerusform>%n perdida</numerusform>
                <numerusform>%n perdidas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the picture is %n image(s) behind</source>
            <translation>
                <numerusform>la imagen va %n imagen por detrás</numerusform>
                <numerusform>la imagen va %n imágenes por detrás</numerusform>
            </translation>
        </message>
        <message>
            <source>The picture is too dark: put more light on the table, or let the camera expose longer.</source>
            <translation>La imagen es demasiado oscura: ilumine más la mesa, o deje que la cámara exponga más tiempo.</translation>
        </message>
        <message>
            <source>Part of the picture is burnt out: dim the lamps, or let the camera expose for a shorter time.</source>
            <translation>Parte de la imagen está quemada: atenúe las lámparas, o deje que la cámara exponga menos tiempo.</translation>
        </message>
        <message>
            <source>Fast balls become streaks: the camera exposes about %1 ms; with more light it can be shorter.</source>
            <translation>Las bolas rápidas dejan estelas: la cámara expone unos %1 ms; con más luz puede ser menos.</translation>
        </message>
        <message>
            <source>Rig not checked at %1: %2</source>
            <comment>time, why</comment>
            <translation>Montaje no comprobado en %1: %2</translation>
        </message>
        <message>
            <source>Rig checked at %1: it fits.</source>
            <translation>Montaje comprobado en %1: encaja.</translation>
        </message>
        <message>
            <source>Rig checked at %1: %2</source>
            <comment>time, what is wrong</comment>
            <translation>Montaje comprobado en %1: %2</translation>
        </message>
    </context>
    <context>
        <name>MarkWords</name>
        <message>
            <source>the %1 pocket</source>
            <comment>a pocket's place</comment>
            <translation>la tronera %1</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the left rail, from the head</source>
            <translation>mira %1 de %2 en el marco izquierdo, desde la cabecera</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the right rail, from the head</source>
            <translation>mira %1 de %2 en el marco derecho, desde la cabecera</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the foot rail, from the left</source>
            <translation>mira %1 de %2 en el marco del pie, desde la izquierda</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the head rail, from the left</source>
            <translation>mira %1 de %2 en el marco de cabecera, desde la izquierda</translation>
        </message>
    </context>
    <context>
        <name>MeasuringWords</name>
        <message>
            <source>aim %1</source>
            <translation>puntería %1</translation>
        </message>
        <message>
            <source>aim and speed not observable</source>
            <translation>puntería y velocidad no observables</translation>
        </message>
        <message>
            <source>less than a minute left</source>
            <translation>queda menos de un minuto</translation>
        </message>
        <message numerus="yes">
            <source>about %n minute(s) left</source>
            <translation>
                <numerusform>queda alrededor de %n minuto</numerusform>
                <numerusform>quedan alrededor de %n minutos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>about %n hour(s) left</source>
            <translation>
                <numerusform>queda alrededor de %n hora</numerusform>
                <numerusform>quedan alrededor de %n horas</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one</source>
            <translation>Buscando el tiro que se sugeriría para cada uno</translation>
        </message>
        <message>
            <source>Opening the film</source>
            <translation>Abriendo el video</translation>
        </message>
        <message>
            <source>Image %1</source>
            <translation>Imagen %1</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>how far, time left</comment>
            <translation>%1; %2</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) measured in %1 of film.</source>
            <translation>
                <numerusform>%n tiro medido en %1 de video.</numerusform>
                <numerusform>%n tiros medidos en %1 de video.</numerusform>
            </translation>
        </message>
        <message>
            <source>The film is shorter than its header says; what is there counts.</source>
            <translation>El video es más corto de lo que dice su cabecera; cuenta lo que hay.</translation>
        </message>
        <message numerus="yes">
            <source>The camera moved %n time(s): shots during a move are doubtful.</source>
            <translation>
                <numerusform>La cámara se movió %n vez: los tiros de ese momento son dudosos.</numerusform>
                <numerusform>La cámara se movió %n veces: los tiros de esos momentos son dudosos.</numerusform>
            </translation>
        </message>
        <message>
            <source>Read with what session "%1" told of this table.</source>
            <translation>Leído con lo que la sesión «%1» mostró de esta mesa.</translation>
        </message>
        <message>
            <source>It stands beside session "%1", which holds the same film.</source>
            <translation>Está junto a la sesión «%1», que contiene el mismo video.</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand beside what would have been suggested.</source>
            <translation>
                <numerusform>%n tiro tiene al lado lo que se habría sugerido.</numerusform>
                <numerusform>%n tiros tienen al lado lo que se habría sugerido.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Stopped. %n shot(s) stand in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</source>
            <translation>
                <numerusform>Detenido. %n tiro queda en la sesión «%1», cuya partida cuenta como incompleta; el video puede medirse otra vez desde el principio cuando se quiera.</numerusform>
                <numerusform>Detenido. %n tiros quedan en la sesión «%1», cuya partida cuenta como incompleta; el video puede medirse otra vez desde el principio cuando se quiera.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>This film was measured before: session "%1" holds its %n shot(s).</source>
            <translation>
                <numerusform>Este video ya se midió: la sesión «%1» contiene su tiro (%n).</numerusform>
                <numerusform>Este video ya se midió: la sesión «%1» contiene sus %n tiros.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Measuring this film was broken off: session "%1" holds its first %n shot(s). Measured again, it becomes a session of its own beside that one.</source>
            <translation>
                <numerusform>La medición de este video se interrumpió: la sesión «%1» contiene su primer tiro (%n). Medido otra vez, será una sesión propia junto a esa.</numerusform>
                <numerusform>La medición de este video se interrumpió: la sesión «%1» contiene sus primeros %n tiros. Medido otra vez, será una sesión propia junto a esa.</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one, %1</source>
            <comment>share</comment>
            <translation>Buscando el tiro que sugerir junto a cada uno, %1</translation>
        </message>
        <message>
            <source>Checking that film and rig belong together</source>
            <translation>Comprobando que video y montaje van juntos</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by up to %1 mm.</source>
            <translation>Tal como está, el lugar de una bola falla hasta en %1 mm.</translation>
        </message>
    </context>
    <context>
        <name>MergeSentence</name>
        <message>
            <source>Nothing of it was new.</source>
            <translation>Nada de ello era nuevo.</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s)</source>
            <translation>
                <numerusform>%n jugador</numerusform>
                <numerusform>%n jugadores</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n sesión</numerusform>
                <numerusform>%n sesiones</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n tiro</numerusform>
                <numerusform>%n tiros</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n drill run(s)</source>
            <translation>
                <numerusform>%n serie de ejercicio</numerusform>
                <numerusform>%n series de ejercicio</numerusform>
            </translation>
        </message>
        <message>
            <source>New: %1.</source>
            <comment>a list of counts</comment>
            <translation>Nuevo: %1.</translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) had been corrected or gone on with there and are now as there.</source>
            <translation>
                <numerusform>%n partida se había corregido o continuado allí y ahora está como allí.</numerusform>
                <numerusform>%n partidas se habían corregido o continuado allí y ahora están como allí.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) were changed in both records and stay as they are here.</source>
            <translation>
                <numerusform>%n partida se cambió en ambos registros y queda como está aquí.</numerusform>
                <numerusform>%n partidas se cambiaron en ambos registros y quedan como están aquí.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of the other record is called %2 here; if both are one person, join them in Players.</source>
            <translation>%1 del otro registro se llama aquí %2; si son la misma persona, únalos en Jugadores.</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s) who were erased here were left out.</source>
            <translation>
                <numerusform>%n jugador borrado aquí quedó fuera.</numerusform>
                <numerusform>%n jugadores borrados aquí quedaron fuera.</numerusform>
            </translation>
        </message>
        <message>
            <source>Erased there, and still here: %1.</source>
            <translation>Borrados allí, todavía aquí: %1.</translation>
        </message>
    </context>
    <context>
        <name>MissSentence</name>
        <message>
            <source>Missed %1 by %2 (%3 at the pocket).</source>
            <translation>Fallada %1 por %2 (%3 en la tronera).</translation>
        </message>
        <message>
            <source>The line was %1 off the middle of the pocket.</source>
            <translation>La línea se desviaba %1 del centro de la tronera.</translation>
        </message>
        <message>
            <source>It rattled in the jaws.</source>
            <translation>Rebotó en la boca de la tronera.</translation>
        </message>
        <message>
            <source>the aim was %1 %2 of the ghost ball</source>
            <translation>la puntería fue %1 más %2 que la bola fantasma</translation>
        </message>
        <message>
            <source>squirt made it %1 %2</source>
            <translation>la deflexión la hizo %1 más %2</translation>
        </message>
        <message>
            <source>swerve made it %1 %2</source>
            <translation>la curva la hizo %1 más %2</translation>
        </message>
        <message>
            <source>throw of the cut made it %1 %2</source>
            <translation>el desvío por corte la hizo %1 más %2</translation>
        </message>
        <message>
            <source>throw of the side spin made it %1 %2</source>
            <translation>el desvío por efecto la hizo %1 más %2</translation>
        </message>
        <message>
            <source>the speed made it %1 %2</source>
            <translation>la velocidad la hizo %1 más %2</translation>
        </message>
        <message>
            <source>%1 %2 stays unexplained</source>
            <translation>%1 (%2) quedan sin explicar</translation>
        </message>
        <message>
            <source>The film does not tell what brought it there.</source>
            <translation>El video no dice qué la llevó allí.</translation>
        </message>
        <message>
            <source>the cue ball was not seen for long enough</source>
            <translation>la blanca no se vio el tiempo suficiente</translation>
        </message>
        <message>
            <source>no stroke that can be simulated goes this way</source>
            <translation>ningún golpe que se pueda simular sigue este recorrido</translation>
        </message>
        <message>
            <source>no cushion, no curve: side spin cannot be seen</source>
            <translation>sin banda ni curva no se puede ver el efecto lateral</translation>
        </message>
        <message>
            <source>side spin did too little to be seen</source>
            <translation>el efecto lateral influyó demasiado poco para verlo</translation>
        </message>
        <message>
            <source>the slide was too short to tell the height of the tip</source>
            <translation>el deslizamiento fue demasiado corto para conocer la altura de ataque</translation>
        </message>
        <message>
            <source>no hop, no curve: the cue's elevation cannot be seen</source>
            <translation>sin salto ni curva no se puede ver la elevación del taco</translation>
        </message>
        <message>
            <source>the film begins with balls in motion</source>
            <translation>el video empieza con bolas en movimiento</translation>
        </message>
        <message>
            <source>the film ends before every ball rests</source>
            <translation>el video acaba antes de que todas las bolas se paren</translation>
        </message>
        <message>
            <source>the next strike came before every ball rested</source>
            <translation>el golpe siguiente llegó antes de que todas las bolas se pararan</translation>
        </message>
        <message>
            <source>a ball was taken up during the shot</source>
            <translation>se levantó una bola durante el tiro</translation>
        </message>
        <message>
            <source>a ball moved that nothing hit</source>
            <translation>se movió una bola que nada tocó</translation>
        </message>
        <message>
            <source>balls may have been taken for each other</source>
            <translation>puede que se hayan confundido unas bolas con otras</translation>
        </message>
        <message>
            <source>a moving ball was lost from view</source>
            <translation>se perdió de vista una bola en movimiento</translation>
        </message>
        <message>
            <source>two balls were hit too close together to tell which came first</source>
            <translation>dos bolas se tocaron casi a la vez y no se distingue cuál fue primero</translation>
        </message>
        <message>
            <source>a ball was lost on its way to a pocket</source>
            <translation>se perdió una bola camino de una tronera</translation>
        </message>
    </context>
    <context>
        <name>NumberWords</name>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 m</source>
            <translation>%1 m</translation>
        </message>
        <message>
            <source>km/h</source>
            <translation>km/h</translation>
        </message>
        <message>
            <source>mph</source>
            <translation>mph</translation>
        </message>
        <message>
            <source>m/s</source>
            <translation>m/s</translation>
        </message>
        <message>
            <source>%1 %</source>
            <comment>per cent</comment>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1–%2 %</source>
            <comment>from, to, per cent</comment>
            <translation>%1–%2 %</translation>
        </message>
    </context>
    <context>
        <name>PeopleWords</name>
        <message>
            <source>a parent or guardian</source>
            <translation>un padre, madre o tutor</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>alguien</translation>
        </message>
        <message>
            <source>%1 (parent or guardian)</source>
            <translation>%1 (padre, madre o tutor)</translation>
        </message>
        <message>
            <source>Ask before shots of this person are measured and kept.</source>
            <translation>Pregunte antes de medir y guardar tiros de esta persona.</translation>
        </message>
        <message>
            <source>No film is kept of this person.</source>
            <translation>No se guarda ningún video de esta persona.</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Desconocida</translation>
        </message>
        <message>
            <source>Right-handed</source>
            <translation>Diestro</translation>
        </message>
        <message>
            <source>Left-handed</source>
            <translation>Zurdo</translation>
        </message>
        <message>
            <source>Both hands</source>
            <translation>Ambas manos</translation>
        </message>
        <message>
            <source>Measured shots</source>
            <translation>Tiros medidos</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Vídeo</translation>
        </message>
        <message>
            <source>Film of a minor</source>
            <translation>Vídeo de un menor</translation>
        </message>
        <message>
            <source>Handing on the report</source>
            <translation>Entrega del informe</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until %3.</source>
            <translation>Dado por %1 el %2, hasta el %3.</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until it is withdrawn.</source>
            <translation>Dado por %1 el %2, hasta que se retire.</translation>
        </message>
        <message>
            <source>Missing.</source>
            <translation>Falta.</translation>
        </message>
        <message>
            <source>Given by %1 on %2, but for a minor a parent or guardian must give it.</source>
            <translation>Dado por %1 el %2, pero para un menor debe darlo un padre, madre o tutor.</translation>
        </message>
        <message>
            <source>Expired on %1.</source>
            <translation>Caducó el %1.</translation>
        </message>
        <message>
            <source>Withdrawn by %1 on %2.</source>
            <translation>Retirado por %1 el %2.</translation>
        </message>
        <message>
            <source>%1 · %2: withdrawn by %3</source>
            <translation>%1 · %2: retirado por %3</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3 until %4</source>
            <translation>%1 · %2: dado por %3 hasta el %4</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3</source>
            <translation>%1 · %2: dado por %3</translation>
        </message>
        <message>
            <source>, noted by %1</source>
            <translation>, anotado por %1</translation>
        </message>
        <message>
            <source>, taken back as a mistake</source>
            <translation>, anulado por error</translation>
        </message>
        <message>
            <source>guest</source>
            <translation>invitado</translation>
        </message>
        <message>
            <source>no consent</source>
            <translation>sin consentimiento</translation>
        </message>
        <message>
            <source>no film</source>
            <translation>sin video</translation>
        </message>
        <message>
            <source>Has not played yet.</source>
            <translation>Aún no ha jugado.</translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n sesión</numerusform>
                <numerusform>%n sesiones</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n tiro</numerusform>
                <numerusform>%n tiros</numerusform>
            </translation>
        </message>
        <message>
            <source>last played on %1</source>
            <translation>jugó por última vez el %1</translation>
        </message>
        <message>
            <source>The report goes to nobody but this person and, for a minor, a parent or guardian.</source>
            <translation>El informe se entrega solo a esta persona y, si es menor, a su padre, madre o tutor.</translation>
        </message>
    </context>
    <context>
        <name>PlaceHelp</name>
        <message>
            <source>Go through the steps from the first; you can leave and come back at any time.</source>
            <translation>Siga los pasos en orden; puede salir y volver en cualquier momento.</translation>
        </message>
        <message>
            <source>Measure the table with a steel rule, nose to nose; equal diagonals mean that it is square.</source>
            <translation>Mida la mesa con una regla de acero, de nariz a nariz; diagonales iguales significan que está a escuadra.</translation>
        </message>
        <message>
            <source>Print the board at its true size, check its ruler, and take at least ten sharp stills that reach every corner of the image.</source>
            <translation>Imprima el tablero a su tamaño real, compruebe su regla y tome al menos diez fotos nítidas que lleguen a cada esquina de la imagen.</translation>
        </message>
        <message>
            <source>Measure where the tags lie and how high they stand: one centimetre of height is worth millimetres at the balls.</source>
            <translation>Mida dónde están las marcas y a qué altura: un centímetro de altura vale milímetros en las bolas.</translation>
        </message>
        <message>
            <source>Ask the self-check whether lens and rig fit the film, and the error map how far a ball may be off.</source>
            <translation>Pregunte a la autocomprobación si la lente y el montaje corresponden al video, y al mapa de error cuánto puede desviarse una bola.</translation>
        </message>
        <message>
            <source>Begin with the game and who plays, or with practice alone.</source>
            <translation>Empiece por la modalidad y quién juega, o por un entrenamiento a solas.</translation>
        </message>
        <message>
            <source>Drag the balls to where they lie; they are drawn to spots, cushions and other balls.</source>
            <translation>Arrastre las bolas a donde están; los puntos, las bandas y otras bolas las atraen.</translation>
        </message>
        <message>
            <source>Click the ball and the pocket that are played for, then press the key of what happened.</source>
            <translation>Haga clic en la bola y la tronera que se buscan y pulse la tecla de lo que pasó.</translation>
        </message>
        <message>
            <source>The referee keeps turn and score; undo takes back any step.</source>
            <translation>El árbitro lleva el turno y el marcador; deshacer retira cualquier paso.</translation>
        </message>
        <message>
            <source>Ask for a suggestion only when you want one: that it was shown is kept with the shot.</source>
            <translation>Pida una sugerencia solo cuando la quiera: que se mostró queda guardado con el tiro.</translation>
        </message>
        <message>
            <source>Choose a shot on the left, or scrub along the time line.</source>
            <translation>Elija un tiro a la izquierda, o recorra la línea de tiempo.</translation>
        </message>
        <message>
            <source>Step by image, by event or by shot; film and plan always show the same moment.</source>
            <translation>Avance por fotograma, por evento o por tiro; video y plano muestran siempre el mismo momento.</translation>
        </message>
        <message>
            <source>Suggested is dashed, taken is solid; the panel on the right sets both side by side.</source>
            <translation>Lo sugerido va a trazos y lo jugado en línea continua; el panel derecho los pone lado a lado.</translation>
        </message>
        <message>
            <source>Each number stands with its standard uncertainty; what the film cannot show is called not observable.</source>
            <translation>Cada número lleva su incertidumbre estándar; lo que el video no puede mostrar se llama no observable.</translation>
        </message>
        <message>
            <source>Filter the shots to play, say, all thick misses one after another.</source>
            <translation>Filtre los tiros para ver, por ejemplo, todos los fallos gruesos uno tras otro.</translation>
        </message>
        <message>
            <source>Choose a player and a period; a second column compares another period or player.</source>
            <translation>Elija un jugador y un período; una segunda columna compara otro período u otro jugador.</translation>
        </message>
        <message>
            <source>Bands and whiskers are 95 % intervals; a change within them may be chance.</source>
            <translation>Las franjas y los bigotes son intervalos del 95 %; un cambio dentro de ellos puede ser azar.</translation>
        </message>
        <message>
            <source>Click a point or a cell to look at the shots behind it.</source>
            <translation>Haga clic en un punto o una celda para ver los tiros que hay detrás.</translation>
        </message>
        <message>
            <source>What to work on names three things at most, with what each is worth in frames.</source>
            <translation>«En qué trabajar» nombra tres cosas como máximo, con lo que vale cada una en partidas.</translation>
        </message>
        <message>
            <source>Choose the student, the period and the student's own language.</source>
            <translation>Elija el alumno, el período y el idioma del alumno.</translation>
        </message>
        <message>
            <source>Write a note of your own: it stands on the first page.</source>
            <translation>Escriba una nota propia: aparece en la primera página.</translation>
        </message>
        <message>
            <source>The sheets on the screen are the ones that print; export them as PDF or HTML.</source>
            <translation>Las hojas de la pantalla son las que se imprimen; expórtelas como PDF o HTML.</translation>
        </message>
        <message>
            <source>Put right what was read wrongly with one key, or from the right button's menu; what follows is read and ruled again.</source>
            <translation>Rectifique con una tecla, o en el menú del botón derecho, lo que se leyó mal; lo que de ello se sigue se vuelve a leer y a juzgar.</translation>
        </message>
        <message>
            <source>Choose a drill on the left; point at a ball to see how its place is measured.</source>
            <translation>Elija un ejercicio a la izquierda; señale una bola para ver cómo se mide su sitio.</translation>
        </message>
        <message>
            <source>Every drill has mirror images: what is easy to one side may be hard to the other.</source>
            <translation>Cada ejercicio tiene sus imágenes reflejadas: lo fácil de un lado puede ser difícil del otro.</translation>
        </message>
        <message>
            <source>Begin a run, click where the cue ball came to rest, and press the key of what happened.</source>
            <translation>Empiece una serie, haga clic donde quedó la blanca y pulse la tecla de lo ocurrido.</translation>
        </message>
        <message>
            <source>Or let the tries be counted from a session that was recorded.</source>
            <translation>O deje que se cuenten los intentos de una sesión grabada.</translation>
        </message>
        <message>
            <source>The history says whether the last run differs from those before by more than chance.</source>
            <translation>El historial dice si la última serie difiere de las anteriores más que por azar.</translation>
        </message>
        <message>
            <source>Add the players first: name, playing hand, groups such as juniors or Tuesday.</source>
            <translation>Añada primero a los jugadores: nombre, mano de juego, grupos como juveniles o martes.</translation>
        </message>
        <message>
            <source>Note who consented to what, when and until when; for a minor a parent or guardian does.</source>
            <translation>Anote quién consintió en qué, cuándo y hasta cuándo; para un menor, un padre, madre o tutor.</translation>
        </message>
        <message>
            <source>What is missing or has expired is said in words, with what follows: without consent no film is kept.</source>
            <translation>Lo que falta o ha caducado se dice con palabras, con sus consecuencias: sin consentimiento no se guarda ningún video.</translation>
        </message>
        <message>
            <source>Nothing leaves the list of consents: withdrawal, renewal and mistakes are lines of their own.</source>
            <translation>Nada desaparece de la lista de consentimientos: retirada, renovación y error son líneas propias.</translation>
        </message>
        <message>
            <source>A guest's shots can be given to a player once it is known who it was.</source>
            <translation>Los tiros de un invitado pueden darse a un jugador en cuanto se sepa quién era.</translation>
        </message>
        <message>
            <source>From a film or live, what the referee cannot see is asked on the right: press the number of the answer.</source>
            <translation>De un video o en directo, lo que el árbitro no puede ver se pregunta a la derecha: pulse el número de la respuesta.</translation>
        </message>
        <message>
            <source>A live session can keep its film beside the record, of people whose consent is noted in Players.</source>
            <translation>Una sesión en directo puede guardar su video junto al registro, de personas cuyo consentimiento consta en Jugadores.</translation>
        </message>
        <message>
            <source>Once Set-up has made a rig, the camera says how far each ball is from its place.</source>
            <translation>Una vez hecho el montaje en Configuración, la cámara dice a qué distancia de su sitio está cada bola.</translation>
        </message>
        <message>
            <source>Hold a shot to set another one beside it, with what differs below.</source>
            <translation>Fije un tiro para poner otro al lado; debajo aparece en qué difieren.</translation>
        </message>
        <message>
            <source>Save what you see as a picture, or the shot as a short film; a film of people is written only with their consent, the plan always.</source>
            <translation>Guarde lo que ve como imagen, o el tiro como video corto; un video de personas solo se escribe con su consentimiento, el plano siempre.</translation>
        </message>
        <message>
            <source>Without tags and board the cushions serve; the error map then says what they cost. A cushion that was missed or mistaken is placed by hand under a loupe, in the step Rig.</source>
            <translation>Sin marcas ni tablero sirven las bandas; el mapa de error dice entonces lo que cuesta. Una banda que falta o está confundida se coloca a mano bajo una lupa, en el paso Montaje.</translation>
        </message>
        <message>
            <source>Every edit can be undone, and brings back what it had made void, the rig included.</source>
            <translation>Todo cambio se puede deshacer y devuelve lo que había anulado, incluido el montaje.</translation>
        </message>
        <message>
            <source>The rig is checked against the film before it is measured, and every five minutes of live play; check the rig again at any moment by its key.</source>
            <translation>El montaje se comprueba con el video antes de medirlo, y cada cinco minutos en vivo; con su tecla se comprueba de nuevo en cualquier momento.</translation>
        </message>
        <message>
            <source>With a projector the suggestion, or where balls must be put back, lies on the cloth. A live session makes it black while somebody leans over the table.</source>
            <translation>Con un proyector, la sugerencia o el lugar donde reponer las bolas aparece en el paño. Una sesión en vivo lo pone en negro mientras alguien se inclina sobre la mesa.</translation>
        </message>
        <message>
            <source>With a projector the set-up can lie on the cloth; never look into the beam.</source>
            <translation>Con un proyector la colocación puede aparecer en el paño; no mire nunca al haz.</translation>
        </message>
    </context>
    <context>
        <name>Places</name>
        <message>
            <source>Set-up</source>
            <translation>Configuración</translation>
        </message>
        <message>
            <source>Set up table, lens and rig, and see how far to trust them</source>
            <translation>Configurar mesa, lente y montaje, y ver hasta dónde fiarse de ellos</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>Sesión</translation>
        </message>
        <message>
            <source>Put in what is played, shot by shot</source>
            <translation>Anotar lo que se juega, tiro a tiro</translation>
        </message>
        <message>
            <source>Review</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Look at measured shots, film and plan together</source>
            <translation>Mirar los tiros medidos, video y plano a la vez</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Progreso</translation>
        </message>
        <message>
            <source>See how a player's aim, speed and makes hold up</source>
            <translation>Ver cómo evolucionan la puntería, la velocidad y los aciertos de un jugador</translation>
        </message>
        <message>
            <source>Reports</source>
            <translation>Informes</translation>
        </message>
        <message>
            <source>Make the progress report that a student takes home</source>
            <translation>Hacer el informe de progreso que el alumno se lleva a casa</translation>
        </message>
        <message>
            <source>Drills</source>
            <translation>Ejercicios</translation>
        </message>
        <message>
            <source>Set up a drill, repeat it, and see the scatter shrink</source>
            <translation>Coloque un ejercicio, repítalo y vea menguar la dispersión</translation>
        </message>
        <message>
            <source>Players</source>
            <translation>Jugadores</translation>
        </message>
        <message>
            <source>Who plays: groups, consent, notes, and what is kept of each</source>
            <translation>Quién juega: grupos, consentimiento, notas y lo que se guarda de cada uno</translation>
        </message>
    </context>
    <context>
        <name>PlanSentence</name>
        <message>
            <source>leaves the opponent an open pot %1 times in 10</source>
            <translation>deja al rival un tiro abierto en %1 de cada 10 casos</translation>
        </message>
        <message>
            <source>pot %1</source>
            <translation>embocar %1</translation>
        </message>
        <message>
            <source>pot %1 against %2</source>
            <translation>embocar %1 frente a %2</translation>
        </message>
        <message>
            <source>the leave gives %1 a shot %2 times in 10</source>
            <translation>deja tiro a %1 en %2 de cada 10 casos</translation>
        </message>
        <message>
            <source>foul %1</source>
            <translation>falta %1</translation>
        </message>
        <message>
            <source>as good as %1</source>
            <translation>vale lo mismo que %1</translation>
        </message>
        <message>
            <source>better than %1</source>
            <translation>mejor que %1</translation>
        </message>
        <message>
            <source>behind %1</source>
            <translation>peor que %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>la %1 a %2</translation>
        </message>
        <message>
            <source>%1 into %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>la %1 contra la %2 a %3</translation>
        </message>
        <message>
            <source>off %1 onto %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>carambola en la %1 y la %2 a %3</translation>
        </message>
        <message>
            <source>bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>la %1 por banda a %2</translation>
        </message>
        <message>
            <source>two-cushion bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>la %1 por dos bandas a %2</translation>
        </message>
        <message>
            <source>kick at %1</source>
            <comment>a ball</comment>
            <translation>blanca por banda a la %1</translation>
        </message>
        <message>
            <source>two-cushion kick at %1</source>
            <comment>a ball</comment>
            <translation>blanca por dos bandas a la %1</translation>
        </message>
        <message>
            <source>safety off %1</source>
            <comment>a ball</comment>
            <translation>defensa con la %1</translation>
        </message>
        <message>
            <source>break</source>
            <translation>saque</translation>
        </message>
        <message>
            <source>%1 was the right shot.</source>
            <translation>%1 era el tiro correcto.</translation>
        </message>
        <message>
            <source>%1 was the right ball, but another speed or spin was better: %2.</source>
            <translation>%1 era la bola correcta, pero era mejor otra velocidad u otro efecto: %2.</translation>
        </message>
        <message>
            <source>%1 is as good as %2: %3.</source>
            <translation>%1 vale lo mismo que %2: %3.</translation>
        </message>
        <message>
            <source>%1 was better than %2.</source>
            <translation>%1 era mejor que %2.</translation>
        </message>
        <message>
            <source>%1 was better than %2: %3.</source>
            <translation>%1 era mejor que %2: %3.</translation>
        </message>
    </context>
    <context>
        <name>PlayCharts</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>value, least, most</comment>
            <translation>%1 (%2 a %3)</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>saque: una bola y sin falta</translation>
        </message>
        <message>
            <source>break: fouls</source>
            <translation>saque: faltas</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>saque: bolas</translation>
        </message>
        <message>
            <source>break: cue ball from the middle</source>
            <translation>saque: de la blanca al centro</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>bolas por entrada</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>partidas ganadas limpiando la mesa</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>faltas, del total de tiros</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>bolas fáciles falladas, del total de fáciles</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>tiempo por tiro</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>El juego</translation>
        </message>
        <message>
            <source>With the number counted; lines and brackets: 95 % interval.</source>
            <translation>Con el número contado; líneas y paréntesis: intervalo del 95 %.</translation>
        </message>
        <message>
            <source>left no direct shot</source>
            <translation>no dejó tiro directo</translation>
        </message>
        <message>
            <source>next player: made a ball</source>
            <translation>jugador siguiente: embocó</translation>
        </message>
        <message>
            <source>next player: missed</source>
            <translation>jugador siguiente: falló</translation>
        </message>
        <message>
            <source>next player: safety</source>
            <translation>jugador siguiente: defensa</translation>
        </message>
        <message>
            <source>next player: foul</source>
            <translation>jugador siguiente: falta</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>Defensas y lo que vino después</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>en el lado equivocado de la bola siguiente</translation>
        </message>
        <message>
            <source>cost on the right side</source>
            <translation>coste en el lado bueno</translation>
        </message>
        <message>
            <source>cost on the wrong side</source>
            <translation>coste en el lado equivocado</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>más largo (+) o más corto que lo pensado</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>Posición para la bola siguiente</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan that was taken. Cost: of the frame's chance. Lines and brackets: 95 % interval.</source>
            <translation>Bolas embocadas, frente al plan jugado. Coste: de la probabilidad de ganar. Líneas y paréntesis: intervalo del 95 %.</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Elección y ejecución</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>bien ejecutado</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>mal ejecutado</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>buena elección</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>mala elección</translation>
        </message>
        <message>
            <source>Shots in each box and the 95 % interval of their share. Ties count as good; shots after a suggestion was shown are left out.</source>
            <translation>Tiros en cada casilla e intervalo del 95 % de su parte. Los empates cuentan como buenos; los tiros tras una sugerencia mostrada se dejan fuera.</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>Probabilidades indicadas y cumplidas</translation>
        </message>
        <message>
            <source>stated %1, fell %2 (%3), %4</source>
            <comment>chance, share, interval, number of shots</comment>
            <translation>indicado %1, embocado %2 (%3), %4</translation>
        </message>
        <message>
            <source>Across: the chance that the plan was given, up: the share that fell, with its 95 % interval. On the dashed line both agree. Hollow: fewer than 10.</source>
            <translation>Horizontal: la probabilidad indicada; vertical: la parte embocada con su intervalo del 95 %. En la línea de guiones ambas coinciden. Puntos huecos: menos de 10.</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>entradas por partida</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>tiempo antes de una bola embocada</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>tiempo antes de un fallo</translation>
        </message>
        <message>
            <source>No direct shot: the planner found none for the next player. Lines: 95 % interval.</source>
            <translation>Sin tiro directo: la búsqueda no halló ninguno para el jugador siguiente. Líneas: intervalo del 95 %.</translation>
        </message>
    </context>
    <context>
        <name>PrintSheets</name>
        <message>
            <source>Calibration board %1</source>
            <translation>Tablero de calibración %1</translation>
        </message>
        <message>
            <source>Tags for the rails</source>
            <translation>Marcas para el marco</translation>
        </message>
        <message>
            <source>Tag %1: black side %2 mm; cut along the dashes, top is up</source>
            <translation>Marca %1: lado negro %2 mm; corte por los guiones, lo de arriba va arriba</translation>
        </message>
        <message>
            <source>Print at 100 %, not fitted to the page. Both lines must measure 100 mm with a steel rule; if not, tell the program what they measure.</source>
            <translation>Imprima al 100 %, sin ajustar a la página. Ambas líneas deben medir 100 mm con una regla de acero; si no, indique al programa cuánto miden.</translation>
        </message>
    </context>
    <context>
        <name>ProgressWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>del %1 al %2</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>desde el %1</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>entrenamiento</translation>
        </message>
        <message>
            <source>matches</source>
            <translation>encuentros</translation>
        </message>
        <message>
            <source>lessons</source>
            <translation>clases</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>Aún no hay datos suficientes para decir qué conviene trabajar primero; cada sesión más ayuda.</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>Ejercicio: %1</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>Este punto y el siguiente valen más o menos lo mismo; empiece por el que quiera.</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection.</source>
            <translation>No hay ningún tiro de este jugador en esta selección.</translation>
        </message>
        <message>
            <source>pots tried: %1</source>
            <translation>intentos de embocar: %1</translation>
        </message>
        <message>
            <source>Not tracked: %1. Changed by a person: %2. Waiting for a person: %3.</source>
            <translation>Sin seguimiento: %1. Cambiados por una persona: %2. A la espera de una persona: %3.</translation>
        </message>
        <message>
            <source>Pocket named by a person: %1 of %2; never mixed with pockets read from the balls.</source>
            <translation>Tronera nombrada por una persona: %1 de %2; nunca se mezclan con las deducidas de las bolas.</translation>
        </message>
        <message>
            <source>Left out, since its pockets differ: %1 (mouth %2 mm, %3).</source>
            <translation>Excluida porque sus troneras son distintas: %1 (boca %2 mm, %3).</translation>
        </message>
        <message>
            <source>Dated in the future: %1. Check the clock.</source>
            <translation>Con fecha futura: %1. Compruebe el reloj.</translation>
        </message>
    </context>
    <context>
        <name>ReportBuilder</name>
        <message>
            <source>Progress report: %1</source>
            <translation>Informe de progreso: %1</translation>
        </message>
        <message>
            <source>%1 · made with Ferrule on %2</source>
            <translation>%1 · hecho con Ferrule el %2</translation>
        </message>
        <message>
            <source>Pots</source>
            <translation>Bolas embocadas</translation>
        </message>
        <message>
            <source>Pots whose pocket was named by a person. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>Intentos cuya tronera nombró una persona. Cada casilla muestra qué parte de las bolas intentadas entró, entre qué valores está la proporción real y cuántas se intentaron.</translation>
        </message>
        <message>
            <source>Made by cut and distance: %1.</source>
            <translation>Embocadas por corte y distancia: %1.</translation>
        </message>
        <message>
            <source>All pots</source>
            <translation>Todos los intentos</translation>
        </message>
        <message>
            <source>made</source>
            <translation>embocadas</translation>
        </message>
        <message>
            <source>95 % interval</source>
            <translation>intervalo del 95 %</translation>
        </message>
        <message>
            <source>tried</source>
            <translation>intentadas</translation>
        </message>
        <message>
            <source>pocket read from the balls</source>
            <translation>tronera deducida de las bolas</translation>
        </message>
        <message>
            <source>pocket named by a person</source>
            <translation>tronera nombrada por una persona</translation>
        </message>
        <message>
            <source>Aim and speed</source>
            <translation>Puntería y velocidad</translation>
        </message>
        <message>
            <source>How far the strokes scatter, session by session: lower is steadier. The aim is worked out from the line on which the object ball ran, so near and far shots compare.</source>
            <translation>Cuánto se dispersan los golpes, sesión a sesión: más bajo es más regular. La puntería se calcula con la línea que siguió la bola objetivo, así que los tiros cercanos y lejanos se pueden comparar.</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>Dispersión de la puntería</translation>
        </message>
        <message>
            <source>Scatter of the aim: not enough sessions with %1 or more to draw.</source>
            <translation>Dispersión de la puntería: faltan sesiones de %1 o más para dibujarla.</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>Dispersión de la velocidad en posiciones repetidas</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>Dispersión de la velocidad</translation>
        </message>
        <message>
            <source>Scatter of the speed: not enough sessions with %1 or more to draw.</source>
            <translation>Dispersión de la velocidad: faltan sesiones de %1 o más para dibujarla.</translation>
        </message>
        <message>
            <source>Scatter of the speed: %1.</source>
            <translation>Dispersión de la velocidad: %1.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <translation>Golpe</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valor</translation>
        </message>
        <message>
            <source>shots</source>
            <translation>tiros</translation>
        </message>
        <message>
            <source>aim: scatter</source>
            <translation>puntería: dispersión</translation>
        </message>
        <message>
            <source>aim: mean, + to the left</source>
            <translation>puntería: media, + a la izquierda</translation>
        </message>
        <message>
            <source>speed: scatter</source>
            <translation>velocidad: dispersión</translation>
        </message>
        <message>
            <source>speed: mean error</source>
            <translation>velocidad: error medio</translation>
        </message>
        <message>
            <source>tip point, side: scatter</source>
            <translation>punto de ataque, lado: dispersión</translation>
        </message>
        <message>
            <source>tip point, height: scatter</source>
            <translation>punto de ataque, altura: dispersión</translation>
        </message>
        <message>
            <source>rest of the cue ball: scatter each way</source>
            <translation>parada de la blanca: dispersión en cada dirección</translation>
        </message>
        <message>
            <source>Nobody wrote down what was meant, so speed, tip point and rest are compared with the player's own mean in set-ups that were repeated: this shows how well a stroke is repeated, not whether it was right.</source>
            <translation>Nadie anotó qué se pretendía; por eso la velocidad, el punto de ataque y la parada se comparan con la media del propio jugador en posiciones repetidas: muestra lo bien que se repite un golpe, no si era el correcto.</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>El juego</translation>
        </message>
        <message>
            <source>Measure</source>
            <translation>Medida</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>casos</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>saque: una bola y sin falta</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>saque: bolas</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>bolas por entrada</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>partidas ganadas limpiando la mesa</translation>
        </message>
        <message>
            <source>safeties that left no direct shot</source>
            <translation>defensas que no dejaron tiro directo</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>faltas, del total de tiros</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>bolas fáciles falladas, del total de fáciles</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>tiempo por tiro</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>tiempo antes de una bola embocada</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>tiempo antes de un fallo</translation>
        </message>
        <message>
            <source>An easy pot is one that this player makes at least four times in five. Hard shots take longer and are missed more often, so more time before a miss is no fault by itself. Innings depend on the opponent and the rack.</source>
            <translation>Una bola fácil es la que este jugador emboca al menos cuatro veces de cada cinco. Los tiros difíciles llevan más tiempo y se fallan más, así que tardar más antes de un fallo no es un defecto por sí mismo. Las entradas dependen del rival y de cómo se armaron las bolas.</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Elección y ejecución</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: no suggestions are recorded for these shots.</source>
            <translation>No se puede decir si se eligió el tiro correcto: no hay sugerencias registradas para estos tiros.</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: %1.</source>
            <translation>No se puede decir si se eligió el tiro correcto: %1.</translation>
        </message>
        <message>
            <source>by the choice</source>
            <translation>por la elección</translation>
        </message>
        <message>
            <source>by the delivery</source>
            <translation>por la ejecución</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>bien ejecutado</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>mal ejecutado</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>buena elección</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>mala elección</translation>
        </message>
        <message>
            <source>Options that are too close to tell apart count as good. A shot is never wrong merely for differing from the suggestion.</source>
            <translation>Las opciones demasiado parecidas para distinguirlas cuentan como buenas. Un tiro nunca está mal solo por ser distinto de la sugerencia.</translation>
        </message>
        <message>
            <source>%1, %2, shot %3 to %4</source>
            <translation>%1, %2, tiro %3 a la tronera %4</translation>
        </message>
        <message>
            <source>Worth looking at again</source>
            <translation>Vale la pena volver a verlos</translation>
        </message>
        <message>
            <source>The best: %1. This player makes such a ball about %2 of the time.</source>
            <translation>El mejor: %1. Este jugador emboca una bola así más o menos el %2 de las veces.</translation>
        </message>
        <message>
            <source>The most instructive: %1. Missed, though such a ball goes in about %2 of the time.</source>
            <translation>El más instructivo: %1. Fallado, aunque una bola así entra más o menos el %2 de las veces.</translation>
        </message>
        <message>
            <source>How the numbers were made</source>
            <translation>Cómo se obtuvieron los números</translation>
        </message>
        <message>
            <source>Intervals hold the true value 95 times in 100. They come from drawing whole sessions again, since shots of one day are alike; shares of single cells are Wilson intervals.</source>
            <translation>Los intervalos contienen el valor real 95 veces de cada 100. Se obtienen sorteando de nuevo sesiones enteras, porque los tiros de un mismo día se parecen; las proporciones de casillas sueltas son intervalos de Wilson.</translation>
        </message>
        <message>
            <source>All findings of this report together raise a false alarm in at most 5 of 100 reports about players of whom none is true.</source>
            <translation>Todos los hallazgos de este informe juntos dan una falsa alarma como máximo en 5 de cada 100 informes de jugadores para los que ninguno es cierto.</translation>
        </message>
        <message>
            <source>Harder shots are allowed for: what went in is compared with what this player makes of shots with the same cut, distances and pocket.</source>
            <translation>Se tiene en cuenta que unos tiros son más difíciles: lo que entró se compara con lo que este jugador emboca en tiros con el mismo corte, las mismas distancias y la misma tronera.</translation>
        </message>
        <message>
            <source>Tables whose pockets differ in width are never put together, and players are not ranked.</source>
            <translation>Nunca se juntan mesas cuyas troneras tienen distinta anchura, y no se hace una clasificación de jugadores.</translation>
        </message>
        <message>
            <source>Position</source>
            <translation>Posición</translation>
        </message>
        <message>
            <source>On which side of the next ball the cue ball was left: %1.</source>
            <translation>En qué lado de la bola siguiente quedó la blanca: %1.</translation>
        </message>
        <message>
            <source>The drill with most tries: %1</source>
            <translation>El ejercicio con más intentos: %1</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>Intentos que cumplieron todo</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>entradas por partida</translation>
        </message>
        <message>
            <source>Pots whose pocket was read from the paths of the balls; a lucky ball may count as meant. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>Intentos cuya tronera se dedujo del recorrido de las bolas; una bola de suerte puede contar como buscada. Cada casilla muestra qué parte de las bolas intentadas entró, entre qué valores está la proporción real y cuántas se intentaron.</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>Embocadas, por corte y distancia de la blanca</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>Embocadas, por corte y distancia a la tronera</translation>
        </message>
        <message>
            <source>On which side the misses lie: too few missed cuts to say.</source>
            <translation>De qué lado se falla: muy pocos cortes fallados para decirlo.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>least, most</comment>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>Two strokes in three lie within the scatter on either side of the mean. R: the ball's radius.</source>
            <translation>Dos de cada tres tiros quedan dentro de la dispersión a ambos lados de la media. R: radio de la bola.</translation>
        </message>
        <message>
            <source>break: distance of the cue ball from the middle</source>
            <translation>saque: distancia de la blanca al centro</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan</source>
            <translation>Bolas embocadas, frente al plan jugado</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>en el lado equivocado de la bola siguiente</translation>
        </message>
        <message>
            <source>cost on the right side, of the frame's chance</source>
            <translation>coste en el lado bueno, de la probabilidad de ganar</translation>
        </message>
        <message>
            <source>cost on the wrong side, of the frame's chance</source>
            <translation>coste en el lado equivocado, de la probabilidad de ganar</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>más largo (+) o más corto que lo pensado</translation>
        </message>
        <message>
            <source>Cost of a shot, of the chance to win the frame</source>
            <translation>Pérdida por tiro, de la probabilidad de ganar la partida</translation>
        </message>
        <message>
            <source>cuts to the left: mean, + thin, − thick</source>
            <translation>cortes a la izquierda: media, + fina, − gruesa</translation>
        </message>
        <message>
            <source>cuts to the right: mean, + thin, − thick</source>
            <translation>cortes a la derecha: media, + fina, − gruesa</translation>
        </message>
    </context>
    <context>
        <name>ReportWords</name>
        <message>
            <source>d MMMM yyyy</source>
            <translation>d 'de' MMMM 'de' yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d MMM</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln tiro</numerusform>
                <numerusform>%Ln tiros</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln session(s)</source>
            <translation>
                <numerusform>%Ln sesión</numerusform>
                <numerusform>%Ln sesiones</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 shots</source>
            <translation>aún no basta: %1 de %2 tiros</translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 sessions</source>
            <translation>aún no basta: %1 de %2 sesiones</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant</source>
            <translation>nadie anotó qué se pretendía</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant, and no set-up was repeated</source>
            <translation>nadie anotó qué se pretendía y no se repitió ninguna posición</translation>
        </message>
        <message>
            <source>the films have no clock</source>
            <translation>los videos no tienen reloj</translation>
        </message>
        <message>
            <source>not recorded yet</source>
            <translation>aún no registrado</translation>
        </message>
        <message>
            <source>the aim over the weeks</source>
            <translation>la puntería a lo largo de las semanas</translation>
        </message>
        <message>
            <source>the control of speed over the weeks</source>
            <translation>el control de la velocidad a lo largo de las semanas</translation>
        </message>
        <message>
            <source>the balls potted over the weeks</source>
            <translation>las bolas embocadas a lo largo de las semanas</translation>
        </message>
        <message>
            <source>the aim after 40 minutes</source>
            <translation>la puntería después de 40 minutos</translation>
        </message>
        <message>
            <source>the balls potted after 40 minutes</source>
            <translation>las bolas embocadas después de 40 minutos</translation>
        </message>
        <message>
            <source>the balls potted in matches</source>
            <translation>las bolas embocadas en encuentros</translation>
        </message>
        <message>
            <source>a pull to the left or right</source>
            <translation>una desviación a izquierda o derecha</translation>
        </message>
        <message>
            <source>thick or thin cuts to the left</source>
            <translation>cortes gruesos o finos a la izquierda</translation>
        </message>
        <message>
            <source>thick or thin cuts to the right</source>
            <translation>cortes gruesos o finos a la derecha</translation>
        </message>
        <message>
            <source>The aim got steadier: from about %1 off to about %2 off.</source>
            <translation>La puntería se hizo más regular: de un error de unos %1 a uno de unos %2.</translation>
        </message>
        <message>
            <source>The aim got less steady: from about %1 off to about %2 off.</source>
            <translation>La puntería se hizo menos regular: de un error de unos %1 a uno de unos %2.</translation>
        </message>
        <message>
            <source>The speed of the stroke got steadier: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>La velocidad del golpe se hizo más regular: al principio variaba en torno al %1 y al final en torno al %2.</translation>
        </message>
        <message>
            <source>The speed of the stroke got less steady: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>La velocidad del golpe se hizo menos regular: al principio variaba en torno al %1 y al final en torno al %2.</translation>
        </message>
        <message>
            <source>Fewer balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>Entraron menos bolas: de 100 intentadas, unas %1 al principio y %2 al final, teniendo en cuenta su dificultad.</translation>
        </message>
        <message>
            <source>More balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>Entraron más bolas: de 100 intentadas, unas %1 al principio y %2 al final, teniendo en cuenta su dificultad.</translation>
        </message>
        <message>
            <source>The aim is better late in a session: about %1 off before 40 minutes and %2 after.</source>
            <translation>La puntería es mejor al final de la sesión: un error de unos %1 antes de los 40 minutos y de %2 después.</translation>
        </message>
        <message>
            <source>The aim gets worse when a session grows long: about %1 off before 40 minutes and %2 after. A break may help.</source>
            <translation>La puntería empeora cuando la sesión se alarga: un error de unos %1 antes de los 40 minutos y de %2 después. Un descanso puede ayudar.</translation>
        </message>
        <message>
            <source>Fewer balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>Al final de la sesión entran menos bolas: de 100 de igual dificultad, unas %1 antes de los 40 minutos y %2 después.</translation>
        </message>
        <message>
            <source>More balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>Al final de la sesión entran más bolas: de 100 de igual dificultad, unas %1 antes de los 40 minutos y %2 después.</translation>
        </message>
        <message>
            <source>Fewer balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>En los encuentros se embocan menos bolas: de 100 de igual dificultad, unas %1 en entrenamiento y %2 en encuentros.</translation>
        </message>
        <message>
            <source>More balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>En los encuentros se embocan más bolas: de 100 de igual dificultad, unas %1 en entrenamiento y %2 en encuentros.</translation>
        </message>
        <message>
            <source>The aim is pulled to the right by %1 on average, whichever way the ball has to go.</source>
            <translation>La puntería se va a la derecha %1 de media, sea cual sea el lado al que debe ir la bola.</translation>
        </message>
        <message>
            <source>The aim is pulled to the left by %1 on average, whichever way the ball has to go.</source>
            <translation>La puntería se va a la izquierda %1 de media, sea cual sea el lado al que debe ir la bola.</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>Las bolas que deben ir a la izquierda se toman demasiado llenas (gruesas): la puntería se desvía %1 de media.</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too thin: the aim is off by %1 on average.</source>
            <translation>Las bolas que deben ir a la izquierda se toman demasiado finas: la puntería se desvía %1 de media.</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>Las bolas que deben ir a la derecha se toman demasiado llenas (gruesas): la puntería se desvía %1 de media.</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too thin: the aim is off by %1 on average.</source>
            <translation>Las bolas que deben ir a la derecha se toman demasiado finas: la puntería se desvía %1 de media.</translation>
        </message>
        <message>
            <source>Centre-line there and back</source>
            <translation>Línea central, ida y vuelta</translation>
        </message>
        <message>
            <source>Cut fan, left half</source>
            <translation>Abanico de cortes, mitad izquierda</translation>
        </message>
        <message>
            <source>Cut fan, right half</source>
            <translation>Abanico de cortes, mitad derecha</translation>
        </message>
        <message>
            <source>Cut fan as the last drill of the day</source>
            <translation>Abanico de cortes como último ejercicio del día</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>Escalera recta con blanca parada</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>Corte fino</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>Arrime a la banda de cabecera</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>Retroceso recto por zonas</translation>
        </message>
        <message>
            <source>Send the cue ball alone from the head spot over the middle of the foot cushion and back; it should return over its start.</source>
            <translation>Lance la blanca sola desde el punto de cabecera al centro de la banda de pie y de vuelta; debe volver a pasar por su punto de salida.</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the left.</source>
            <translation>Bola objetivo en la línea central, a un cuarto de mesa de la banda de pie; la blanca a media anchura de mesa; cortes de 15, 30, 45 y 60 grados a la izquierda.</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the right.</source>
            <translation>Bola objetivo en la línea central, a un cuarto de mesa de la banda de pie; la blanca a media anchura de mesa; cortes de 15, 30, 45 y 60 grados a la derecha.</translation>
        </message>
        <message>
            <source>Cuts of 15, 30, 45 and 60 degrees to both sides, played after 40 minutes of practice: rest for five minutes first, and keep the routine.</source>
            <translation>Cortes de 15, 30, 45 y 60 grados a ambos lados, jugados tras 40 minutos de entrenamiento: descanse antes cinco minutos y mantenga la rutina.</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer; the cue ball stops dead at the contact.</source>
            <translation>Bolas rectas desde cuatro distancias, cada una un paso más larga; la blanca se queda parada en el contacto.</translation>
        </message>
        <message>
            <source>Object ball a quarter of the table from the foot cushion and near the side; cut of 65 degrees into the corner.</source>
            <translation>Bola objetivo a un cuarto de mesa de la banda de pie y cerca del lateral; corte de 65 grados a la esquina.</translation>
        </message>
        <message>
            <source>Object ball on the foot spot, cue ball behind the head string: cuts of 33, 47 and 60 degrees into the corner.</source>
            <translation>Bola objetivo en el punto de pie, blanca detrás de la línea de cabecera: cortes de 33, 47 y 60 grados a la esquina.</translation>
        </message>
        <message>
            <source>Send the cue ball alone from behind the head string to the foot cushion and back; it should stop as near to the head cushion as it can.</source>
            <translation>Lance la blanca sola desde detrás de la línea de cabecera a la banda de pie y de vuelta; debe pararse lo más cerca posible de la banda de cabecera.</translation>
        </message>
        <message>
            <source>Straight pots of a metre; the cue ball comes back by nothing, one, two and three hands' breadths, called before each stroke.</source>
            <translation>Bolas rectas de un metro; la blanca retrocede cero, uno, dos y tres anchos de mano, anunciados antes de cada golpe.</translation>
        </message>
        <message>
            <source>The pull of the aim to one side</source>
            <translation>La desviación de la puntería hacia un lado</translation>
        </message>
        <message>
            <source>Cuts to the left</source>
            <translation>Cortes a la izquierda</translation>
        </message>
        <message>
            <source>Cuts to the right</source>
            <translation>Cortes a la derecha</translation>
        </message>
        <message>
            <source>The end of long sessions</source>
            <translation>El final de las sesiones largas</translation>
        </message>
        <message>
            <source>Long shots</source>
            <translation>Tiros largos</translation>
        </message>
        <message>
            <source>Thin cuts</source>
            <translation>Cortes finos</translation>
        </message>
        <message>
            <source>Short and medium shots</source>
            <translation>Tiros cortos y medios</translation>
        </message>
        <message>
            <source>Control of the speed</source>
            <translation>Control de la velocidad</translation>
        </message>
        <message>
            <source>Where the tip meets the ball</source>
            <translation>Dónde toca la suela la bola</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the speed.</source>
            <translation>Se jugaron otra vez %1 tiros en el simulador con una quinta parte menos de dispersión de la velocidad.</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the tip.</source>
            <translation>Se jugaron otra vez %1 tiros en el simulador con una quinta parte menos de dispersión del punto de ataque.</translation>
        </message>
        <message>
            <source>%1 such pots were tried and %2 made.</source>
            <translation>De %1 bolas así intentadas se embocó el %2.</translation>
        </message>
        <message>
            <source>Test again on %1.</source>
            <translation>Repita la prueba el %1.</translation>
        </message>
        <message>
            <source>Target: speeds that scatter by %1 or less.</source>
            <translation>Objetivo: velocidades que se dispersen un %1 o menos.</translation>
        </message>
        <message>
            <source>Target: a tip that scatters by %1 of the ball's radius or less.</source>
            <translation>Objetivo: un punto de ataque que se disperse un %1 del radio de la bola o menos.</translation>
        </message>
        <message>
            <source>Target: %1 of %2.</source>
            <translation>Objetivo: %1 de %2.</translation>
        </message>
        <message>
            <source>Were these a fifth steadier, about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>Si estos fueran una quinta parte más regulares, entrarían unas %1 bolas más de cada 100 intentadas (muy probablemente %2).</translation>
        </message>
        <message>
            <source>Without this habit about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>Sin este hábito entrarían unas %1 bolas más de cada 100 intentadas (muy probablemente %2).</translation>
        </message>
        <message>
            <source>That is worth about %1 frames of every 100 (very probably %2).</source>
            <translation>Eso vale unas %1 partidas de cada 100 (muy probablemente %2).</translation>
        </message>
        <message>
            <source>%1 or more of %2 would prove by themselves that it was no luck.</source>
            <translation>%1 o más de %2 probarían por sí solas que no fue suerte.</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>Cortes largos desde el punto de pie</translation>
        </message>
    </context>
    <context>
        <name>ReviewWords</name>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>image %1 of %2</source>
            <translation>fotograma %1 de %2</translation>
        </message>
    </context>
    <context>
        <name>RulingSentence</name>
        <message>
            <source>Foul: %1.</source>
            <translation>Falta: %1.</translation>
        </message>
        <message>
            <source> and </source>
            <comment>last of a list</comment>
            <translation> y </translation>
        </message>
        <message>
            <source>A push-out.</source>
            <translation>Un push-out.</translation>
        </message>
        <message>
            <source>The break was too weak, which is no foul.</source>
            <translation>El saque fue demasiado débil, lo que no es falta.</translation>
        </message>
        <message>
            <source>%1 has %2.</source>
            <translation>%1 lleva %2.</translation>
        </message>
        <message>
            <source>%1 is spotted.</source>
            <translation>%1 se repone en su punto.</translation>
        </message>
        <message>
            <source>%1 is put back.</source>
            <translation>%1 vuelve a su lugar.</translation>
        </message>
        <message>
            <source>All balls are racked.</source>
            <translation>Se arman todas las bolas.</translation>
        </message>
        <message>
            <source>14 balls are racked without the apex.</source>
            <translation>Se arman 14 bolas, sin la del vértice.</translation>
        </message>
        <message>
            <source>%1 is at the table, %2.</source>
            <translation>%1 tiene el turno, %2.</translation>
        </message>
        <message>
            <source>%1 plays on.</source>
            <translation>%1 sigue jugando.</translation>
        </message>
        <message>
            <source>%1 is at the table.</source>
            <translation>%1 tiene el turno.</translation>
        </message>
        <message>
            <source>%1 may choose: %2.</source>
            <translation>%1 puede elegir: %2.</translation>
        </message>
        <message>
            <source> or </source>
            <comment>last of a list</comment>
            <translation> o </translation>
        </message>
        <message>
            <source>%1: %2, now %3.</source>
            <comment>player, points of the shot, points in all</comment>
            <translation>%1: %2, ahora %3.</translation>
        </message>
        <message>
            <source>%1 wins the frame: %2.</source>
            <translation>%1 gana la partida: %2.</translation>
        </message>
        <message>
            <source>Overruled by %1.</source>
            <translation>Decisión cambiada por %1.</translation>
        </message>
    </context>
    <context>
        <name>RulingWords</name>
        <message>
            <source>a ball</source>
            <translation>una bola</translation>
        </message>
        <message>
            <source>another ball</source>
            <translation>otra bola</translation>
        </message>
        <message>
            <source>Which ball was met first, %1 or %2?</source>
            <translation>¿Qué bola se tocó primero, %1 o %2?</translation>
        </message>
        <message>
            <source>Did %1 touch a cushion?</source>
            <translation>¿Tocó %1 una banda?</translation>
        </message>
        <message>
            <source>Did %1 fall?</source>
            <translation>¿Cayó %1?</translation>
        </message>
        <message>
            <source>Where did %1 end: on the table, in a pocket or off the table?</source>
            <translation>¿Dónde acabó %1: en la mesa, en una tronera o fuera de la mesa?</translation>
        </message>
        <message>
            <source>Did %1 leave the table and touch anything before it came back?</source>
            <translation>¿Salió %1 de la mesa y tocó algo antes de volver?</translation>
        </message>
        <message>
            <source>Did somebody touch %1?</source>
            <translation>¿Tocó alguien %1?</translation>
        </message>
        <message>
            <source>Was the cue ball struck twice? It lay very close to %1.</source>
            <translation>¿Se golpeó dos veces la blanca? Estaba muy cerca de %1.</translation>
        </message>
        <message>
            <source>Was %1 declared frozen to the cushion?</source>
            <translation>¿Se declaró %1 pegada a la banda?</translation>
        </message>
        <message>
            <source>Which was which, %1 and %2?</source>
            <translation>¿Cuál era cuál, %1 y %2?</translation>
        </message>
        <message>
            <source>Did %1 lie behind the head string?</source>
            <translation>¿Estaba %1 detrás de la línea de cabecera?</translation>
        </message>
        <message>
            <source>Was %1 called in that pocket?</source>
            <translation>¿Se cantó %1 a esa tronera?</translation>
        </message>
        <message>
            <source>the first player</source>
            <translation>el primer jugador</translation>
        </message>
        <message>
            <source>the second player</source>
            <translation>el segundo jugador</translation>
        </message>
        <message>
            <source>the cue ball fell or left the table</source>
            <translation>la blanca cayó o salió de la mesa</translation>
        </message>
        <message>
            <source>%1 was met first</source>
            <translation>%1 se tocó primero</translation>
        </message>
        <message>
            <source>a wrong ball</source>
            <translation>una bola equivocada</translation>
        </message>
        <message>
            <source>no ball was met</source>
            <translation>no se tocó ninguna bola</translation>
        </message>
        <message>
            <source>nothing fell and no ball met a cushion after the contact</source>
            <translation>no entró nada y ninguna bola tocó banda después del contacto</translation>
        </message>
        <message>
            <source>no foot was on the floor</source>
            <translation>no había ningún pie en el suelo</translation>
        </message>
        <message>
            <source>%1 left the table</source>
            <translation>%1 salió de la mesa</translation>
        </message>
        <message>
            <source>%1 was touched</source>
            <translation>alguien tocó %1</translation>
        </message>
        <message>
            <source>the cue ball was struck twice</source>
            <translation>la blanca se golpeó dos veces</translation>
        </message>
        <message>
            <source>the cue ball was pushed</source>
            <translation>la blanca se empujó</translation>
        </message>
        <message>
            <source>balls were still moving</source>
            <translation>aún había bolas en movimiento</translation>
        </message>
        <message>
            <source>the cue ball was not placed behind the head string</source>
            <translation>la blanca no se colocó detrás de la línea de cabecera</translation>
        </message>
        <message>
            <source>the cue ball did not cross the head string before it met %1</source>
            <translation>la blanca no cruzó la línea de cabecera antes de tocar %1</translation>
        </message>
        <message>
            <source>the cue was laid on the table to aim</source>
            <translation>se apoyó el taco en la mesa para apuntar</translation>
        </message>
        <message>
            <source>it was the other's turn</source>
            <translation>era el turno del otro</translation>
        </message>
        <message>
            <source>the time was over</source>
            <translation>se acabó el tiempo</translation>
        </message>
        <message>
            <source>the rack template was in the way</source>
            <translation>la plantilla del triángulo estorbaba</translation>
        </message>
        <message>
            <source>unsportsmanlike conduct</source>
            <translation>conducta antideportiva</translation>
        </message>
        <message>
            <source>too few balls were driven to a cushion on the break</source>
            <translation>muy pocas bolas llegaron a banda en el saque</translation>
        </message>
        <message>
            <source>Did balls still move when the shot began?</source>
            <translation>¿Se movían aún bolas cuando empezó el tiro?</translation>
        </message>
        <message>
            <source>Did the cue ball lie behind the head string?</source>
            <translation>¿Estaba la blanca detrás de la línea de cabecera?</translation>
        </message>
        <message>
            <source>The film does not show the shot well enough. What happened?</source>
            <translation>El video no muestra el tiro lo bastante bien. ¿Qué pasó?</translation>
        </message>
        <message>
            <source>Who plays the solids and who the stripes?</source>
            <translation>¿Quién juega las lisas y quién las rayadas?</translation>
        </message>
        <message>
            <source>How many balls fell or passed the head string on the break?</source>
            <translation>¿Cuántas bolas cayeron o pasaron la línea de cabecera en el saque?</translation>
        </message>
        <message>
            <source>Was a push-out announced?</source>
            <translation>¿Se anunció un push-out?</translation>
        </message>
        <message>
            <source>Was the player told of two fouls in a row?</source>
            <translation>¿Se avisó al jugador de que llevaba dos faltas seguidas?</translation>
        </message>
        <message>
            <source>Other balls lie on the table than the shots before left there. Which are in play?</source>
            <translation>En la mesa hay otras bolas que las que dejaron los tiros anteriores. ¿Cuáles están en juego?</translation>
        </message>
        <message>
            <source>The rules do not spell this case out. How is it ruled?</source>
            <translation>Las reglas no detallan este caso. ¿Qué se decide?</translation>
        </message>
        <message>
            <source>The frame was over before this shot. Was it?</source>
            <translation>La partida había terminado antes de este tiro. ¿Es así?</translation>
        </message>
        <message>
            <source>play from here</source>
            <translation>jugar desde aquí</translation>
        </message>
        <message>
            <source>take the cue ball in hand</source>
            <translation>tomar la blanca en mano</translation>
        </message>
        <message>
            <source>take it behind the head string</source>
            <translation>tomar la blanca detrás de la línea de cabecera</translation>
        </message>
        <message>
            <source>have the balls racked and break</source>
            <translation>que se armen las bolas y sacar</translation>
        </message>
        <message>
            <source>have %1 break again</source>
            <translation>que %1 saque otra vez</translation>
        </message>
        <message>
            <source>have the 8 spotted and play</source>
            <translation>que se reponga la 8 y jugar</translation>
        </message>
        <message>
            <source>have %1 play on</source>
            <translation>que siga %1</translation>
        </message>
        <message>
            <source>the 8 was potted as called</source>
            <translation>la 8 entró como se cantó</translation>
        </message>
        <message>
            <source>the 8 fell on a foul</source>
            <translation>la 8 cayó con una falta</translation>
        </message>
        <message>
            <source>the 8 fell before its time</source>
            <translation>la 8 cayó antes de tiempo</translation>
        </message>
        <message>
            <source>the 8 fell into a pocket that was not called</source>
            <translation>la 8 cayó en una tronera no cantada</translation>
        </message>
        <message>
            <source>the 8 left the table</source>
            <translation>la 8 salió de la mesa</translation>
        </message>
        <message>
            <source>the 8 fell on the break</source>
            <translation>la 8 cayó en el saque</translation>
        </message>
        <message>
            <source>the 8 and the cue ball fell on the break</source>
            <translation>la 8 y la blanca cayeron en el saque</translation>
        </message>
        <message>
            <source>the cue ball was lost with the 8 on</source>
            <translation>la blanca se perdió jugando a la 8</translation>
        </message>
        <message>
            <source>the 9 was potted</source>
            <translation>la 9 entró</translation>
        </message>
        <message>
            <source>the 10 was potted as called</source>
            <translation>la 10 entró como se cantó</translation>
        </message>
        <message>
            <source>the points are reached</source>
            <translation>se alcanzaron los puntos</translation>
        </message>
        <message>
            <source>three fouls in a row</source>
            <translation>tres faltas seguidas</translation>
        </message>
        <message>
            <source>the other conceded</source>
            <translation>el otro se rindió</translation>
        </message>
        <message>
            <source>ruled by a person</source>
            <translation>decidido por una persona</translation>
        </message>
        <message>
            <source>the solids</source>
            <translation>las lisas</translation>
        </message>
        <message>
            <source>the stripes</source>
            <translation>las rayadas</translation>
        </message>
        <message>
            <source>cue ball in hand behind the head string</source>
            <translation>bola en mano detrás de la línea de cabecera</translation>
        </message>
        <message>
            <source>cue ball in hand</source>
            <translation>bola en mano</translation>
        </message>
        <message>
            <source>cue ball on the head spot</source>
            <translation>blanca en el punto de cabecera</translation>
        </message>
        <message>
            <source>cue ball on the centre spot</source>
            <translation>blanca en el punto central</translation>
        </message>
        <message>
            <source>rules before 2008</source>
            <translation>reglas anteriores a 2008</translation>
        </message>
        <message>
            <source>house rule</source>
            <translation>regla de la casa</translation>
        </message>
        <message>
            <source>world rules 2008, %1</source>
            <translation>reglas mundiales 2008, %1</translation>
        </message>
        <message>
            <source>world rules 2016, %1</source>
            <translation>reglas mundiales 2016, %1</translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message>
            <source>Practice without a referee</source>
            <translation>Entrenamiento sin árbitro</translation>
        </message>
        <message>
            <source>%1 won: %2.</source>
            <translation>%1 ganó: %2.</translation>
        </message>
        <message>
            <source>%1 breaks</source>
            <translation>%1 saca</translation>
        </message>
        <message>
            <source>%1 is at the table, %2 to %3</source>
            <comment>player, points of the first and the second seat</comment>
            <translation>%1 tiene el turno, %2 a %3</translation>
        </message>
        <message>
            <source>%1 is on the 8</source>
            <translation>%1 va a la 8</translation>
        </message>
        <message>
            <source>%1 is at the table and has %2</source>
            <translation>%1 tiene el turno y lleva %2</translation>
        </message>
        <message>
            <source>%1 is at the table</source>
            <translation>%1 tiene el turno</translation>
        </message>
        <message>
            <source>Choose the ball that is played for, then say what happened.</source>
            <translation>Elija la bola a la que se juega y luego diga qué pasó.</translation>
        </message>
        <message>
            <source>%1; choose its pocket.</source>
            <translation>%1; elija su tronera.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>%1, cut %2</source>
            <comment>ball to pocket, angle</comment>
            <translation>%1, corte %2</translation>
        </message>
        <message>
            <source>%1  %2, %3</source>
            <comment>rank, plan, speed</comment>
            <translation>%1  %2, %3</translation>
        </message>
        <message>
            <source>easy</source>
            <translation>fácil</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>medio</translation>
        </message>
        <message>
            <source>hard</source>
            <translation>difícil</translation>
        </message>
        <message>
            <source>very hard</source>
            <translation>muy difícil</translation>
        </message>
        <message>
            <source>%1 for this player: the aim may be off by %2 to the left and %3 to the right.</source>
            <translation>%1 para este jugador: la puntería puede desviarse %2 a la izquierda y %3 a la derecha.</translation>
        </message>
        <message>
            <source>The record holds no measured pot of this player; a club player stands in.</source>
            <translation>El registro no tiene ningún intento medido de este jugador; en su lugar se toma un jugador de club.</translation>
        </message>
        <message numerus="yes">
            <source>Aim spread %1, from %n measured shot(s).</source>
            <translation>
                <numerusform>Dispersión de la puntería %1, de %n tiro medido.</numerusform>
                <numerusform>Dispersión de la puntería %1, de %n tiros medidos.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SetUpWords</name>
        <message>
            <source>%1 to the foot</source>
            <translation>%1 hacia el pie</translation>
        </message>
        <message>
            <source>%1 to the head</source>
            <translation>%1 hacia la cabecera</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>%1 a la izquierda</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>%1 a la derecha</translation>
        </message>
        <message>
            <source>%1 is not at its place.</source>
            <translation>%1 no está en su sitio.</translation>
        </message>
        <message>
            <source>%1: %2 off, stands.</source>
            <translation>%1: a %2, está en su sitio.</translation>
        </message>
        <message>
            <source>%1: %2 off; move it %3.</source>
            <comment>a ball, a length, where</comment>
            <translation>%1: a %2; mover %3.</translation>
        </message>
        <message>
            <source>Loose balls are missing, or lie too close to each other or to a cushion.</source>
            <translation>Faltan bolas sueltas, o están demasiado cerca unas de otras o de una banda.</translation>
        </message>
        <message>
            <source>The cue ball in hand is not where it may lie.</source>
            <translation>La blanca en mano no está donde puede estar.</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) lie there that do not belong to the set-up.</source>
            <translation>
                <numerusform>%n bola no pertenece a la colocación.</numerusform>
                <numerusform>%n bolas no pertenecen a la colocación.</numerusform>
            </translation>
        </message>
        <message>
            <source>Set up within %1: the try may begin.</source>
            <translation>Colocado a menos de %1: el intento puede empezar.</translation>
        </message>
        <message>
            <source>Not yet within %1.</source>
            <translation>Todavía no a menos de %1.</translation>
        </message>
    </context>
    <context>
        <name>SetupSteps</name>
        <message>
            <source>Table</source>
            <translation>Mesa</translation>
        </message>
        <message>
            <source>Balls</source>
            <translation>Bolas</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>Cámara</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>Lente</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Marcas</translation>
        </message>
        <message>
            <source>Rig</source>
            <translation>Montaje</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Comprobación</translation>
        </message>
        <message>
            <source>Trust</source>
            <translation>Confianza</translation>
        </message>
        <message>
            <source>Projector</source>
            <translation>Proyector</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Choose the table's size, or measure it from cushion nose to cushion nose.</source>
            <translation>Elija el tamaño de la mesa, o mídala de nariz a nariz de las bandas.</translation>
        </message>
        <message>
            <source>A ball's size tells how high its middle lies above the cloth, and where a pocket takes it.</source>
            <translation>El tamaño de una bola dice a qué altura sobre el paño está su centro y dónde la toma una tronera.</translation>
        </message>
        <message>
            <source>Film the whole table as you will film play, and choose that film or a still of it.</source>
            <translation>Grabe la mesa entera tal como grabará el juego, y elija ese video o una foto suya.</translation>
        </message>
        <message>
            <source>Every lens bends the picture. Stills of a printed board show how much, and where.</source>
            <translation>Toda lente curva la imagen. Las fotos de un tablero impreso muestran cuánto y dónde.</translation>
        </message>
        <message>
            <source>Four printed tags on the rails tell where the camera sits.</source>
            <translation>Cuatro marcas impresas sobre el marco dicen dónde está la cámara.</translation>
        </message>
        <message>
            <source>Lens, tags and film together give the camera's place over this table.</source>
            <translation>La lente, las marcas y el video juntos dan el lugar de la cámara sobre esta mesa.</translation>
        </message>
        <message>
            <source>Does everything belong together? The film itself is asked.</source>
            <translation>¿Concuerda todo entre sí? Lo dice el propio video.</translation>
        </message>
        <message>
            <source>How far a ball may be off, where that comes from, and what it is worth in a shot.</source>
            <translation>Qué error puede tener el lugar de una bola, a qué se debe y qué supone en un tiro.</translation>
        </message>
        <message>
            <source>If a projector hangs over the table: let the camera see where its light falls.</source>
            <translation>Si hay un proyector sobre la mesa: deje que la cámara vea dónde cae su luz.</translation>
        </message>
        <message>
            <source>Save the files; films of this table are measured with them from now on.</source>
            <translation>Guarde los archivos; desde ahora los videos de esta mesa se miden con ellos.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Precaución</translation>
        </message>
        <message>
            <source> mm</source>
            <translation> mm</translation>
        </message>
    </context>
    <context>
        <name>SetupWords</name>
        <message>
            <source>found</source>
            <translation>encontrado</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>no encontrado</translation>
        </message>
        <message>
            <source>old layout: print the board anew</source>
            <translation>diseño antiguo: imprima otra vez el tablero</translation>
        </message>
        <message>
            <source>mirrored: not used</source>
            <translation>invertida en espejo: no se usa</translation>
        </message>
        <message>
            <source>blurred: not used</source>
            <translation>borrosa: no se usa</translation>
        </message>
        <message>
            <source>same as %1: counts once</source>
            <translation>igual que %1: cuenta una vez</translation>
        </message>
        <message>
            <source>other size: not used</source>
            <translation>otro tamaño: no se usa</translation>
        </message>
        <message>
            <source>not a picture: not used</source>
            <translation>no es una imagen: no se usa</translation>
        </message>
        <message>
            <source>Looking for the board</source>
            <translation>Buscando el tablero</translation>
        </message>
        <message>
            <source>Looking for the tags</source>
            <translation>Buscando las marcas</translation>
        </message>
        <message>
            <source>Looking for the cushions</source>
            <translation>Buscando las bandas</translation>
        </message>
        <message>
            <source>Looking at the film</source>
            <translation>Mirando el video</translation>
        </message>
        <message>
            <source>Comparing what could be wrong</source>
            <translation>Comparando qué podría estar mal</translation>
        </message>
        <message>
            <source>Working it out</source>
            <translation>Calculando</translation>
        </message>
        <message>
            <source>The lens foretells the board's corners to %1 px (rms) over %2 of %3 stills, out to %4 % of the way to the picture's corners.</source>
            <translation>La lente predice las esquinas del tablero con %1 px (rms) en %2 de %3 fotos, hasta el %4 % del camino a las esquinas de la imagen.</translation>
        </message>
        <message>
            <source>Beyond that the lens is a guess: add stills with the board in the corners.</source>
            <translation>Más allá, la lente es una suposición: añada fotos con el tablero en las esquinas.</translation>
        </message>
        <message>
            <source>Turn</source>
            <translation>Giro</translation>
        </message>
        <message>
            <source>Image size</source>
            <translation>Tamaño de imagen</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>Lente</translation>
        </message>
        <message>
            <source>Camera's place</source>
            <translation>Lugar de la cámara</translation>
        </message>
        <message>
            <source>Height of the tags</source>
            <translation>Altura de las marcas</translation>
        </message>
        <message>
            <source>Finding the ball</source>
            <translation>Localización de la bola</translation>
        </message>
        <message>
            <source>Ball and bed</source>
            <translation>Bola y pizarra</translation>
        </message>
        <message>
            <source>Rows read in turn</source>
            <translation>Lectura fila por fila</translation>
        </message>
        <message>
            <source>Measure the tags' corners again with a steel rule, and lay them far apart.</source>
            <translation>Mida otra vez las esquinas de las marcas con una regla de acero y póngalas muy separadas.</translation>
        </message>
        <message>
            <source>Add stills of the board, tilted and out to the picture's corners.</source>
            <translation>Añada fotos del tablero, inclinado y hasta las esquinas de la imagen.</translation>
        </message>
        <message>
            <source>Measure the height of the tags above the cloth with a depth gauge.</source>
            <translation>Mida la altura de las marcas sobre el paño con un calibre de profundidad.</translation>
        </message>
        <message>
            <source>Use a larger picture, more even light, or a cloth that differs from the balls.</source>
            <translation>Use una imagen mayor, una luz más uniforme o un paño que se distinga de las bolas.</translation>
        </message>
        <message>
            <source>Nothing is gained here: balls and bed are as even as they are made.</source>
            <translation>Aquí no se gana nada: las bolas y la pizarra son tan regulares como se fabrican.</translation>
        </message>
        <message>
            <source>A camera that reads all rows at once would help moving balls; those at rest need none.</source>
            <translation>Una cámara que lea todas las filas a la vez ayudaría con las bolas en movimiento; las paradas no la necesitan.</translation>
        </message>
        <message>
            <source>Cut %1 ± %2; the ball comes %3 mm (rms) off the pocket's middle, where there are %4 mm to either side. Somebody who plays perfectly on these places pots %5 %.</source>
            <translation>Corte %1 ± %2; la bola llega a %3 mm (rms) del centro de la tronera, donde hay %4 mm a cada lado. Quien juega a la perfección con estos lugares emboca el %5 %.</translation>
        </message>
    </context>
    <context>
        <name>ShotChartWords</name>
        <message>
            <source>%1, shot %2</source>
            <translation>%1, tiro %2</translation>
        </message>
        <message>
            <source>the last %1 of %2 shots</source>
            <translation>los últimos %1 de %2 tiros</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>Tiros en la diana</translation>
        </message>
        <message>
            <source>aim: left – right</source>
            <translation>puntería: izquierda – derecha</translation>
        </message>
        <message>
            <source>speed: harder, softer</source>
            <translation>velocidad: más fuerte, más suave</translation>
        </message>
        <message>
            <source>Hollow: missed pots. Ellipse: 95 of 100 shots.</source>
            <translation>Puntos huecos: bolas falladas. Elipse: 95 de cada 100 tiros.</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>Dónde tocó la suela la bola</translation>
        </message>
        <message>
            <source>side %1 R, height %2 R</source>
            <translation>lado %1 R, altura %2 R</translation>
        </message>
        <message>
            <source>As seen along the cue. Dashed: miscue limit. Hollow: missed pots.</source>
            <translation>Visto a lo largo del taco. Guiones: límite de pifia. Puntos huecos: bolas falladas.</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>Velocidad pedida y ejecutada</translation>
        </message>
        <message>
            <source>On the dashed line both agree. Hollow: missed pots.</source>
            <translation>En la línea de guiones ambas coinciden. Puntos huecos: bolas falladas.</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>Dónde se detuvo la blanca</translation>
        </message>
        <message>
            <source>along the table, + to the foot, mm</source>
            <translation>a lo largo de la mesa, + hacia el pie, mm</translation>
        </message>
        <message>
            <source>across the table, mm</source>
            <translation>a lo ancho de la mesa, mm</translation>
        </message>
        <message>
            <source>%1 mm along, %2 mm across</source>
            <translation>%1 mm a lo largo, %2 mm a lo ancho</translation>
        </message>
        <message>
            <source>The middle is where it was asked to rest. Ellipse: 95 of 100 shots.</source>
            <translation>El centro es donde debía detenerse. Elipse: 95 de cada 100 tiros.</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>Mapa de fallos</translation>
        </message>
        <message>
            <source>%1 thick, %2 thin</source>
            <translation>%1 gruesas, %2 finas</translation>
        </message>
        <message>
            <source>too thick, %1, cut %2</source>
            <translation>demasiado gruesa, %1, corte %2</translation>
        </message>
        <message>
            <source>too thin, %1, cut %2</source>
            <translation>demasiado fina, %1, corte %2</translation>
        </message>
        <message>
            <source>Object balls that were missed, head on the left. Filled: too thick, hollow: too thin. At the pockets: what was missed there.</source>
            <translation>Bolas objetivo falladas, cabecera a la izquierda. Rellenas: demasiado gruesas; huecas: demasiado finas. En las troneras: lo que se falló allí.</translation>
        </message>
        <message>
            <source>Where nobody said what was meant, the mean of the repeated set-up stands in.</source>
            <translation>Donde nadie dijo lo pretendido, vale la media de la posición repetida.</translation>
        </message>
        <message>
            <source>aim %1°, speed %2</source>
            <translation>puntería %1°, velocidad %2</translation>
        </message>
        <message>
            <source>asked, %1</source>
            <comment>a unit of speed</comment>
            <translation>pedida, %1</translation>
        </message>
        <message>
            <source>delivered, %1</source>
            <comment>a unit of speed</comment>
            <translation>ejecutada, %1</translation>
        </message>
        <message>
            <source>asked %1, delivered %2</source>
            <comment>two speeds</comment>
            <translation>pedida %1, ejecutada %2</translation>
        </message>
        <message>
            <source>Where nobody said, the leave of the plan stands in that the shot was read as.</source>
            <translation>Donde nadie lo dijo, vale la parada del plan que se leyó en el tiro.</translation>
        </message>
    </context>
    <context>
        <name>ShotComparison</name>
        <message>
            <source>Aim</source>
            <translation>Dirección</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Velocidad</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>Ataque: lado</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>Ataque: altura</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Elevación</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Corte</translation>
        </message>
        <message>
            <source>Line error</source>
            <translation>Error de línea</translation>
        </message>
        <message>
            <source>Cue ball at rest</source>
            <translation>Blanca en reposo</translation>
        </message>
        <message>
            <source>%1 apart</source>
            <translation>a %1 una de otra</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Resultado</translation>
        </message>
    </context>
    <context>
        <name>ShotWords</name>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>a %1 de la banda de pie</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>a %1 de la banda de cabecera</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>a %1 de la banda izquierda</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>a %1 de la banda derecha</translation>
        </message>
        <message>
            <source>the cue ball was hidden</source>
            <translation>la blanca estaba tapada</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Dirección</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Velocidad</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>Ataque: lado</translation>
        </message>
        <message>
            <source>nothing that it did shows the spin</source>
            <translation>nada de lo que hizo revela el efecto</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>Ataque: altura</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Elevación</translation>
        </message>
        <message>
            <source>no curve and no hop</source>
            <translation>ni curva ni salto</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>corte %1</translation>
        </message>
        <message>
            <source>%1 to the ball</source>
            <translation>%1 hasta la bola</translation>
        </message>
        <message>
            <source>%1 to the pocket</source>
            <translation>%1 hasta la tronera</translation>
        </message>
        <message>
            <source>%1 left the pocket's middle by %2</source>
            <translation>%1 se desvió %2 del centro de la tronera</translation>
        </message>
        <message>
            <source>, %1 at the pocket</source>
            <translation>, %1 en la tronera</translation>
        </message>
        <message>
            <source>: cut too much, thin</source>
            <translation>: corte de más, fina</translation>
        </message>
        <message>
            <source>: cut too little, thick</source>
            <translation>: corte de menos, gruesa</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <comment>ball, along, across</comment>
            <translation>%1: %2, %3</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) did not move.</source>
            <translation>
                <numerusform>%n bola no se movió.</numerusform>
                <numerusform>%n bolas no se movieron.</numerusform>
            </translation>
        </message>
        <message>
            <source>corrected by hand</source>
            <translation>corregido a mano</translation>
        </message>
        <message>
            <source>Not a clean reading: %1.</source>
            <translation>Lectura poco clara: %1.</translation>
        </message>
        <message>
            <source>Ruled before: %1</source>
            <translation>Decisión anterior: %1</translation>
        </message>
        <message>
            <source>To be settled: %1</source>
            <translation>Por decidir: %1</translation>
        </message>
        <message>
            <source>Ruled before a correction: %1</source>
            <translation>Decidido antes de una corrección: %1</translation>
        </message>
    </context>
    <context>
        <name>TradeWords</name>
        <message>
            <source>%1 o'clock</source>
            <comment>a place on the ball's face</comment>
            <translation>%1:00</translation>
        </message>
        <message>
            <source>half past twelve</source>
            <translation>12:30</translation>
        </message>
        <message>
            <source>half past one</source>
            <translation>1:30</translation>
        </message>
        <message>
            <source>half past two</source>
            <translation>2:30</translation>
        </message>
        <message>
            <source>half past three</source>
            <translation>3:30</translation>
        </message>
        <message>
            <source>half past four</source>
            <translation>4:30</translation>
        </message>
        <message>
            <source>half past five</source>
            <translation>5:30</translation>
        </message>
        <message>
            <source>half past six</source>
            <translation>6:30</translation>
        </message>
        <message>
            <source>half past seven</source>
            <translation>7:30</translation>
        </message>
        <message>
            <source>half past eight</source>
            <translation>8:30</translation>
        </message>
        <message>
            <source>half past nine</source>
            <translation>9:30</translation>
        </message>
        <message>
            <source>half past ten</source>
            <translation>10:30</translation>
        </message>
        <message>
            <source>half past eleven</source>
            <translation>11:30</translation>
        </message>
        <message>
            <source>the cue ball</source>
            <translation>la blanca</translation>
        </message>
        <message>
            <source>the %1</source>
            <comment>an object ball by its number</comment>
            <translation>la %1</translation>
        </message>
        <message>
            <source>The cue ball</source>
            <translation>La blanca</translation>
        </message>
        <message>
            <source>The %1</source>
            <comment>an object ball by its number</comment>
            <translation>La %1</translation>
        </message>
        <message>
            <source>cue</source>
            <comment>cue ball, in a narrow list</comment>
            <translation>blanca</translation>
        </message>
        <message>
            <source>head-left</source>
            <translation>cabecera izquierda</translation>
        </message>
        <message>
            <source>head-right</source>
            <translation>cabecera derecha</translation>
        </message>
        <message>
            <source>side-left</source>
            <translation>central izquierda</translation>
        </message>
        <message>
            <source>side-right</source>
            <translation>central derecha</translation>
        </message>
        <message>
            <source>foot-left</source>
            <translation>pie izquierda</translation>
        </message>
        <message>
            <source>foot-right</source>
            <translation>pie derecha</translation>
        </message>
        <message>
            <source>the head cushion</source>
            <translation>la banda de cabecera</translation>
        </message>
        <message>
            <source>the foot cushion</source>
            <translation>la banda de pie</translation>
        </message>
        <message>
            <source>the left-head cushion</source>
            <translation>la banda izquierda de cabecera</translation>
        </message>
        <message>
            <source>the left-foot cushion</source>
            <translation>la banda izquierda de pie</translation>
        </message>
        <message>
            <source>the right-head cushion</source>
            <translation>la banda derecha de cabecera</translation>
        </message>
        <message>
            <source>the right-foot cushion</source>
            <translation>la banda derecha de pie</translation>
        </message>
        <message>
            <source>made</source>
            <translation>embocada</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>fallada</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>defensa</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>blanca perdida</translation>
        </message>
        <message>
            <source>foul</source>
            <translation>falta</translation>
        </message>
        <message>
            <source>break</source>
            <translation>saque</translation>
        </message>
        <message>
            <source>certain</source>
            <translation>seguro</translation>
        </message>
        <message>
            <source>likely</source>
            <translation>probable</translation>
        </message>
        <message>
            <source>cannot be decided from the film: please check</source>
            <translation>no se puede decidir con el video: compruébelo</translation>
        </message>
        <message>
            <source>eight-ball</source>
            <translation>bola 8</translation>
        </message>
        <message>
            <source>nine-ball</source>
            <translation>bola 9</translation>
        </message>
        <message>
            <source>ten-ball</source>
            <translation>bola 10</translation>
        </message>
        <message>
            <source>straight pool</source>
            <translation>14.1 continuo</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>two balls</comment>
            <translation>%1 toca %2</translation>
        </message>
        <message>
            <source>%1 meets a ball</source>
            <translation>%1 toca una bola</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>ball and cushion</comment>
            <translation>%1 toca %2</translation>
        </message>
        <message>
            <source>%1 meets a cushion</source>
            <translation>%1 toca una banda</translation>
        </message>
        <message>
            <source>%1 falls, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1 cae, %2</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1 cae</translation>
        </message>
        <message>
            <source>%1 leaves the table</source>
            <translation>%1 sale de la mesa</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball and pocket</comment>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>off %1</source>
            <comment>the first ball met</comment>
            <translation>sobre %1</translation>
        </message>
        <message>
            <source>no ball met</source>
            <translation>no tocó ninguna bola</translation>
        </message>
        <message>
            <source>thin</source>
            <translation>fina</translation>
        </message>
        <message>
            <source>thick</source>
            <translation>gruesa</translation>
        </message>
        <message>
            <source>Shot %1: the break</source>
            <translation>Tiro %1: el saque</translation>
        </message>
        <message>
            <source>no ball</source>
            <translation>ninguna bola</translation>
        </message>
        <message>
            <source>Shot %1: met %2, %3</source>
            <translation>Tiro %1, contacto: %2, %3</translation>
        </message>
        <message>
            <source>missed %1</source>
            <comment>thin or thick</comment>
            <translation>fallada %1</translation>
        </message>
        <message>
            <source>Shot %1: %2 to %3, %4</source>
            <translation>Tiro %1: %2 a %3, %4</translation>
        </message>
        <message>
            <source>Struck at the centre, as far as can be seen.</source>
            <translation>Golpeada en el centro, hasta donde se puede ver.</translation>
        </message>
        <message>
            <source>Struck at about %1, %2 from the centre.</source>
            <translation>Golpeada hacia la posición %1 del reloj, a %2 del centro.</translation>
        </message>
        <message>
            <source>pocketed: %1</source>
            <comment>balls</comment>
            <translation>embocadas: %1</translation>
        </message>
        <message>
            <source>also pocketed: %1</source>
            <comment>balls</comment>
            <translation>embocadas también: %1</translation>
        </message>
    </context>
    <context>
        <name>ferrule::AboutPage</name>
        <message>
            <source>About Ferrule</source>
            <translation>Acerca de Ferrule</translation>
        </message>
        <message>
            <source>Ferrule %1 turns film of a cue-sports table into measured shots.</source>
            <translation>Ferrule %1 convierte el video de una mesa de billar en tiros medidos.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Tenga cuidado</translation>
        </message>
        <message>
            <source>Hang a camera or a projector over people only from fixings rated for the load, with a safety tether.</source>
            <translation>Cuelgue una cámara o un proyector sobre personas solo de fijaciones aptas para la carga y con un cable de seguridad.</translation>
        </message>
        <message>
            <source>Leave mains work to a licensed electrician; local codes come first.</source>
            <translation>Deje el trabajo con la red eléctrica a un electricista autorizado; las normas locales van primero.</translation>
        </message>
        <message>
            <source>Never look into the projector's beam, and never let a person lean into it.</source>
            <translation>No mire nunca al haz del proyector ni deje que nadie se incline dentro de él.</translation>
        </message>
        <message>
            <source>Jump shots: protect the eyes and keep the space around the table clear.</source>
            <translation>Tiros de salto: proteja los ojos y despeje el espacio alrededor de la mesa.</translation>
        </message>
        <message>
            <source>Film people, minors above all, only with consent, and as local law allows.</source>
            <translation>Filme a personas, sobre todo a menores, solo con consentimiento y según permita la ley local.</translation>
        </message>
        <message>
            <source>The numbers carry their uncertainty: believe no millimetre that the error map does not give.</source>
            <translation>Los números llevan su incertidumbre: no crea ningún milímetro que el mapa de error no dé.</translation>
        </message>
        <message>
            <source>Your data</source>
            <translation>Sus datos</translation>
        </message>
        <message>
            <source>Everything stays on this computer, in files that only you can read; nothing is sent anywhere.</source>
            <translation>Todo queda en este equipo, en archivos que solo usted puede leer; no se envía nada.</translation>
        </message>
        <message>
            <source>Licence</source>
            <translation>Licencia</translation>
        </message>
        <message>
            <source>Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
            <translation>Software libre bajo la Licencia Pública General de GNU (GNU General Public License), versión 3 o posterior. Sin ninguna garantía.</translation>
        </message>
        <message>
            <source>Made with</source>
            <translation>Hecho con</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallTray</name>
        <message>
            <source>Balls off the table</source>
            <translation>Bolas fuera de la mesa</translation>
        </message>
        <message>
            <source>Every ball is on the table.</source>
            <translation>Todas las bolas están en la mesa.</translation>
        </message>
        <message>
            <source>Off the table:</source>
            <translation>Fuera de la mesa:</translation>
        </message>
        <message>
            <source>Put %1 on the table</source>
            <translation>Poner %1 en la mesa</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallsPage</name>
        <message>
            <source>A ball's diameter</source>
            <translation>Diámetro de una bola</translation>
        </message>
        <message>
            <source>&amp;Diameter</source>
            <translation>&amp;Diámetro</translation>
        </message>
        <message>
            <source>A ball's weight</source>
            <translation>Peso de una bola</translation>
        </message>
        <message>
            <source> g</source>
            <translation> g</translation>
        </message>
        <message>
            <source>&amp;Weight</source>
            <translation>&amp;Peso</translation>
        </message>
        <message>
            <source>Lay five balls in a row against a straight edge and measure from end to end: a fifth of it is the diameter, five times as exact. Balls of the world specification have 57.15 mm and 156 to 170 g.</source>
            <translation>Ponga cinco bolas en fila contra un borde recto y mida de extremo a extremo: una quinta parte es el diámetro, con cinco veces más exactitud. Las bolas de la norma mundial miden 57,15 mm y pesan de 156 a 170 g.</translation>
        </message>
        <message>
            <source>the balls' diameter</source>
            <translation>diámetro de las bolas</translation>
        </message>
        <message>
            <source>the balls' weight</source>
            <translation>peso de las bolas</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraChoice</name>
        <message>
            <source>Camera</source>
            <translation>Cámara</translation>
        </message>
        <message>
            <source>Size and rate of the images</source>
            <translation>Tamaño y ritmo de las imágenes</translation>
        </message>
        <message>
            <source>Choose a film that stands in for the camera</source>
            <translation>Elegir un video que sustituya a la cámara</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>Vídeos (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>A film of this camera, played at its own pace</source>
            <translation>Un video de esta cámara, a su propio ritmo</translation>
        </message>
        <message>
            <source>Set the camera to a fixed focus and exposure: a whole number of mains periods against flicker, short enough that a fast ball is no streak. What set-up was made with must stay.</source>
            <translation>Fije el enfoque y la exposición de la cámara: un número entero de períodos de la red contra el parpadeo, tan corto que una bola rápida no deje estela. Lo usado en la configuración debe quedar igual.</translation>
        </message>
        <message>
            <source>The rig was made at %1 × %2; images of another size cannot be measured with it.</source>
            <translation>El montaje se hizo a %1 × %2; con él no se pueden medir imágenes de otro tamaño.</translation>
        </message>
        <message>
            <source>A film in place of a camera</source>
            <translation>Un video en lugar de una cámara</translation>
        </message>
        <message>
            <source>No camera was found: connect one, or let a film stand in to try it.</source>
            <translation>No se encontró ninguna cámara: conecte una, o use un video en su lugar para probar.</translation>
        </message>
        <message>
            <source>Everything happens as with a camera, also when measuring cannot keep up.</source>
            <translation>Todo sucede como con una cámara, también si la medición no da abasto.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraPage</name>
        <message>
            <source>Such as: wide camera, hall</source>
            <translation>Por ejemplo: cámara gran angular, sala</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>&amp;Cámara</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Vídeo</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>Imagen</translation>
        </message>
        <message>
            <source>Choose a &amp;film or still…</source>
            <translation>Elegir un &amp;video o una foto…</translation>
        </message>
        <message>
            <source>Fixed focus and exposure, a whole number of mains periods, the highest image rate; stabilisation, zoom and lens correction off. Every later step needs pictures of this size.</source>
            <translation>Enfoque fijo y exposición fija de un número entero de periodos de la red eléctrica, con la mayor frecuencia de fotogramas; estabilización, zoom y corrección de lente desactivados. Todos los pasos siguientes necesitan imágenes de este tamaño.</translation>
        </message>
        <message>
            <source>A camera overhead hangs over people: fix it to the building's structure with fittings rated for its load, never to a ceiling tile, and add a steel tether to a second point. Work from a proper ladder with a second person, not from the table, and secure yourself against a fall. Fixed mains wiring is the work of a licensed electrician; lead no cable where people walk. Local codes come first.</source>
            <translation>Una cámara en alto cuelga sobre personas: fíjela a la estructura del edificio con herrajes aptos para su carga, nunca a una placa del techo, y añada un cable de acero a un segundo punto. Trabaje desde una escalera adecuada y con otra persona, no desde la mesa, y asegúrese contra caídas. La instalación eléctrica fija es trabajo de un electricista autorizado; no lleve cables por donde pasa la gente. Las normas locales tienen prioridad.</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>ninguno todavía</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>aún no se conoce</translation>
        </message>
        <message>
            <source>%1 × %2 px</source>
            <translation>%1 × %2 px</translation>
        </message>
        <message>
            <source>%1, %2 images a second</source>
            <translation>%1, %2 fotogramas por segundo</translation>
        </message>
        <message>
            <source>%1, turned by %2° as its file says</source>
            <translation>%1, girado %2° según su archivo</translation>
        </message>
        <message>
            <source>the camera's name</source>
            <translation>nombre de la cámara</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraSource</name>
        <message>
            <source>The camera %1 sends no images (%2). Look at its cable, whether another program uses it, and whether this program may use cameras.</source>
            <translation>La cámara %1 no envía imágenes (%2). Revise el cable, si otro programa la usa y si este programa puede usar cámaras.</translation>
        </message>
        <message>
            <source>The camera %1 is gone; what it saw until then is kept.</source>
            <translation>La cámara %1 ya no está; lo que vio hasta entonces se conserva.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ChainRow</name>
        <message>
            <source>then</source>
            <translation>después</translation>
        </message>
        <message>
            <source>Sensor</source>
            <translation>Sensor</translation>
        </message>
        <message>
            <source>%1 × %2 px</source>
            <translation>%1 × %2 px</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CheckPage</name>
        <message>
            <source>Everything fits</source>
            <translation>Todo concuerda</translation>
        </message>
        <message>
            <source>The camera has moved</source>
            <translation>La cámara se ha movido</translation>
        </message>
        <message>
            <source>Lens of another camera</source>
            <translation>Lente de otra cámara</translation>
        </message>
        <message>
            <source>Corrected twice</source>
            <translation>Corregido dos veces</translation>
        </message>
        <message>
            <source>Not corrected</source>
            <translation>Sin corregir</translation>
        </message>
        <message>
            <source>Other size of picture</source>
            <translation>Otro tamaño de imagen</translation>
        </message>
        <message>
            <source>Tags at another height</source>
            <translation>Marcas a otra altura</translation>
        </message>
        <message>
            <source>A tag at another place</source>
            <translation>Una marca en otro lugar</translation>
        </message>
        <message>
            <source>Two tags swapped</source>
            <translation>Dos marcas intercambiadas</translation>
        </message>
        <message>
            <source>A tag turned</source>
            <translation>Una marca girada</translation>
        </message>
        <message>
            <source>Other size of table</source>
            <translation>Otro tamaño de mesa</translation>
        </message>
        <message>
            <source>Something does not fit</source>
            <translation>Algo no concuerda</translation>
        </message>
        <message>
            <source>Every correction between sensor and table, in order</source>
            <translation>Todas las correcciones entre el sensor y la mesa, en orden</translation>
        </message>
        <message>
            <source>&amp;Check this film</source>
            <translation>&amp;Comprobar este video</translation>
        </message>
        <message>
            <source>Check &amp;another film…</source>
            <translation>Comprobar &amp;otro video…</translation>
        </message>
        <message>
            <source>Add a &amp;lens to the chain…</source>
            <translation>Añadir una &amp;lente a la cadena…</translation>
        </message>
        <message>
            <source>What the film shows</source>
            <translation>Lo que muestra el video</translation>
        </message>
        <message>
            <source>What else was tried</source>
            <translation>Qué más se probó</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>Aún no hay video de la mesa; elija uno en el paso Cámara.</translation>
        </message>
        <message>
            <source>Add a lens to the chain</source>
            <translation>Añadir una lente a la cadena</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>Archivos de lente (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Not checked yet</source>
            <translation>Aún no comprobado</translation>
        </message>
        <message>
            <source>There is no rig yet</source>
            <translation>Aún no hay montaje</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 (sure to %2 %)</source>
            <comment>what the check found, how sure</comment>
            <translation>%1 (seguro al %2 %)</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by %1 (rms), by %2 at the worst place: %3 toward the foot and %4 to the left of the middle.</source>
            <translation>Tal como está, el lugar de una bola tiene un error de %1 (rms), y de %2 en el peor punto: %3 hacia el pie y %4 a la izquierda del centro.</translation>
        </message>
        <message>
            <source>%1: probability %2 %, misses what is seen by %3 standard deviations</source>
            <translation>%1: probabilidad %2 %, se aparta de lo visto en %3 desviaciones estándar</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CompareView</name>
        <message>
            <source>Plan of the shot that is held</source>
            <translation>Plano del tiro fijado</translation>
        </message>
        <message>
            <source>Plan of the shot that is compared with it</source>
            <translation>Plano del tiro que se compara</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Valor</translation>
        </message>
        <message>
            <source>Held</source>
            <translation>Fijado</translation>
        </message>
        <message>
            <source>Other</source>
            <translation>Otro</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Diferencia</translation>
        </message>
        <message>
            <source>What differs between the two shots</source>
            <translation>En qué difieren los dos tiros</translation>
        </message>
        <message>
            <source>Choose the shot that is to be compared.</source>
            <translation>Elija el tiro que quiere comparar.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ConsentSection</name>
        <message>
            <source>Filming people, minors above all: ask first, and in writing. For a minor a parent or guardian gives consent before the camera runs; the law where you play may ask for more.</source>
            <translation>Filmar a personas, sobre todo a menores: pregunte primero y por escrito. Por un menor consiente un padre, madre o tutor antes de que la cámara grabe; la ley local puede exigir más.</translation>
        </message>
        <message>
            <source>Who gave or withdrew it</source>
            <translation>Quién lo dio o lo retiró</translation>
        </message>
        <message>
            <source>&amp;By</source>
            <translation>&amp;Por</translation>
        </message>
        <message>
            <source>a &amp;parent or guardian</source>
            <translation>un pa&amp;dre, madre o tutor</translation>
        </message>
        <message>
            <source>From this day on</source>
            <translation>Desde este día</translation>
        </message>
        <message>
            <source>&amp;On</source>
            <translation>E&amp;l</translation>
        </message>
        <message>
            <source>Unti&amp;l</source>
            <translation>&amp;Hasta</translation>
        </message>
        <message>
            <source>It ends on a day</source>
            <translation>Termina un día</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Último día</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Anotar</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Renew…</source>
            <translation>Renovar…</translation>
        </message>
        <message>
            <source>Note…</source>
            <translation>Anotar…</translation>
        </message>
        <message>
            <source>Note consent: %1</source>
            <translation>Anotar el consentimiento: %1</translation>
        </message>
        <message>
            <source>Withdraw…</source>
            <translation>Retirar…</translation>
        </message>
        <message>
            <source>Withdraw consent: %1</source>
            <translation>Retirar el consentimiento: %1</translation>
        </message>
        <message>
            <source>Consent given: %1</source>
            <translation>Consentimiento dado: %1</translation>
        </message>
        <message>
            <source>Consent withdrawn: %1</source>
            <translation>Consentimiento retirado: %1</translation>
        </message>
        <message>
            <source>Name of the parent or guardian</source>
            <translation>Nombre del padre, madre o tutor</translation>
        </message>
        <message>
            <source>Say who gave or withdrew consent.</source>
            <translation>Diga quién dio o retiró el consentimiento.</translation>
        </message>
        <message>
            <source>The consent would end before it begins; choose a later last day.</source>
            <translation>El consentimiento terminaría antes de empezar; elija un último día posterior.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CoverageView</name>
        <message>
            <source>The board was seen in %1 % of the picture</source>
            <translation>El tablero se vio en el %1 % de la imagen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DetailPanel</name>
        <message>
            <source>Left and right exchanged</source>
            <translation>Izquierda y derecha cambiadas</translation>
        </message>
        <message>
            <source>Head and foot exchanged</source>
            <translation>Cabecera y pie cambiados</translation>
        </message>
        <message>
            <source>Spread the balls anew</source>
            <translation>Repartir de nuevo las bolas</translation>
        </message>
        <message>
            <source>Whose run it is; may stay empty</source>
            <translation>De quién es la serie; puede quedar vacío</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>&amp;Jugador</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>Un tamaño usual, o la ruta de un archivo de mesa</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Mesa</translation>
        </message>
        <message>
            <source>Begin a run</source>
            <translation>Empezar una serie</translation>
        </message>
        <message>
            <source>Or find the tries in a session that was recorded:</source>
            <translation>O encontrar los intentos en una sesión grabada:</translation>
        </message>
        <message>
            <source>Recorded session</source>
            <translation>Sesión grabada</translation>
        </message>
        <message>
            <source>Count its tries</source>
            <translation>Contar sus intentos</translation>
        </message>
        <message>
            <source>Edit</source>
            <translation>Editar</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Eliminar</translation>
        </message>
        <message>
            <source>Its runs stay; undo brings it back</source>
            <translation>Sus series quedan; deshacer lo recupera</translation>
        </message>
        <message>
            <source>Copy and change</source>
            <translation>Copiar y cambiar</translation>
        </message>
        <message>
            <source>Export…</source>
            <translation>Exportar…</translation>
        </message>
        <message>
            <source>A try counts when: %1; %2 tries.</source>
            <translation>Un intento cuenta cuando: %1; %2 intentos.</translation>
        </message>
        <message>
            <source>Cue ball in hand.</source>
            <translation>Blanca en mano.</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>Intentos que cumplieron todo</translation>
        </message>
        <message>
            <source>No run yet: how the tries come out over the weeks will stand here.</source>
            <translation>Aún no hay series: aquí se verá cómo salen los intentos con las semanas.</translation>
        </message>
        <message>
            <source>Not enough yet: %1 of %2 tries.</source>
            <translation>Aún no basta: %1 de %2 intentos.</translation>
        </message>
        <message>
            <source>Best run: %1, %2.</source>
            <translation>Mejor serie: %1, %2.</translation>
        </message>
        <message>
            <source>Count on while it is played</source>
            <translation>Seguir contando mientras se juega</translation>
        </message>
        <message>
            <source>For a session that is live or being measured from a film</source>
            <translation>Para una sesión en directo o que se mide de un video</translation>
        </message>
        <message>
            <source>Go on with the last run (%1 of %2)</source>
            <translation>Seguir con la última serie (%1 de %2)</translation>
        </message>
        <message>
            <source>All runs together: %1, between %2 and %3, of %4 tries.</source>
            <translation>Todas las series juntas: %1, entre %2 y %3, de %4 intentos.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillPicture</name>
        <message>
            <source>Set-up; in a run a click or the arrow keys put where the cue ball came to rest</source>
            <translation>Colocación; en una serie, un clic o las flechas ponen dónde quedó la blanca</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillsPlace</name>
        <message>
            <source>Drills</source>
            <translation>Ejercicios</translation>
        </message>
        <message>
            <source>No shot of this session was played from the set-up of this drill.</source>
            <translation>Ningún tiro de esta sesión se jugó desde la colocación de este ejercicio.</translation>
        </message>
        <message numerus="yes">
            <source>%n try(s) counted: %1</source>
            <translation>
                <numerusform>%n intento contado: %1</numerusform>
                <numerusform>%n intentos contados: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Deleted; undo brings it back. Its runs stay.</source>
            <translation>Eliminado; deshacer lo recupera. Sus series quedan.</translation>
        </message>
        <message>
            <source>%1, my own</source>
            <translation>%1, propio</translation>
        </message>
        <message>
            <source>Find a drill</source>
            <translation>Buscar un ejercicio</translation>
        </message>
        <message>
            <source>Kind of drill</source>
            <translation>Tipo de ejercicio</translation>
        </message>
        <message>
            <source>Import…</source>
            <translation>Importar…</translation>
        </message>
        <message>
            <source>Take over the drills of a file</source>
            <translation>Tomar los ejercicios de un archivo</translation>
        </message>
        <message>
            <source>New drill</source>
            <translation>Nuevo ejercicio</translation>
        </message>
        <message>
            <source>My drill</source>
            <translation>Mi ejercicio</translation>
        </message>
        <message>
            <source>Set-up of the drill</source>
            <translation>Colocación del ejercicio</translation>
        </message>
        <message>
            <source>All drills</source>
            <translation>Todos los ejercicios</translation>
        </message>
        <message>
            <source>Set-up %1</source>
            <translation>Colocación %1</translation>
        </message>
        <message>
            <source>Import drills</source>
            <translation>Importar ejercicios</translation>
        </message>
        <message>
            <source>Drills (*.json);;All files (*)</source>
            <translation>Ejercicios (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Nothing of %1 was taken over: in "%2" %3</source>
            <translation>No se tomó nada de %1: en «%2» %3</translation>
        </message>
        <message numerus="yes">
            <source>%n drill(s) taken over.</source>
            <translation>
                <numerusform>%n ejercicio tomado.</numerusform>
                <numerusform>%n ejercicios tomados.</numerusform>
            </translation>
        </message>
        <message>
            <source>Export the drill</source>
            <translation>Exportar el ejercicio</translation>
        </message>
        <message>
            <source>Written to %1.</source>
            <translation>Escrito en %1.</translation>
        </message>
        <message>
            <source>Project this set-up</source>
            <translation>Proyectar esta colocación</translation>
        </message>
        <message>
            <source>Show on the cloth where the balls belong and where they are to rest</source>
            <translation>Mostrar en el paño dónde van las bolas y dónde deben quedar</translation>
        </message>
    </context>
    <context>
        <name>ferrule::EditorPanel</name>
        <message>
            <source>Keep the drill</source>
            <translation>Guardar el ejercicio</translation>
        </message>
        <message>
            <source>Do not keep</source>
            <translation>No guardar</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>What it is f&amp;or</source>
            <translation>Para &amp;qué sirve</translation>
        </message>
        <message>
            <source>Words with commas</source>
            <translation>Palabras con comas</translation>
        </message>
        <message>
            <source>&amp;Kinds</source>
            <translation>&amp;Tipos</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>Embocar</translation>
        </message>
        <message>
            <source>Pot and leave</source>
            <translation>Embocar y colocar</translation>
        </message>
        <message>
            <source>Leave alone</source>
            <translation>Solo colocar</translation>
        </message>
        <message>
            <source>Hit and hide</source>
            <translation>Tocar y esconder</translation>
        </message>
        <message>
            <source>Clear the table</source>
            <translation>Limpiar la mesa</translation>
        </message>
        <message>
            <source>As it is</source>
            <translation>Tal como está</translation>
        </message>
        <message>
            <source>&amp;Asked</source>
            <translation>&amp;Se pide</translation>
        </message>
        <message>
            <source>&amp;Tries</source>
            <translation>&amp;Intentos</translation>
        </message>
        <message>
            <source>&amp;Zone's radius</source>
            <translation>Radio de la &amp;zona</translation>
        </message>
        <message>
            <source>A jump shot: show the caution</source>
            <translation>Un tiro con salto: mostrar el aviso</translation>
        </message>
        <message>
            <source>Means the same from the other end</source>
            <translation>Igual desde el otro extremo</translation>
        </message>
        <message>
            <source>Ball</source>
            <translation>Bola</translation>
        </message>
        <message>
            <source>Put it on the table</source>
            <translation>Ponerla en la mesa</translation>
        </message>
        <message>
            <source>One set-up more</source>
            <translation>Una colocación más</translation>
        </message>
        <message>
            <source>Remove this set-up</source>
            <translation>Quitar esta colocación</translation>
        </message>
        <message>
            <source>Set-ups in turn, try by try</source>
            <translation>Colocaciones por turno</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErasePanel</name>
        <message>
            <source>Erasing takes a player out of the record for good, with everything that is kept of the player. Export the player first if anything may be needed again.</source>
            <translation>Borrar quita a un jugador del registro para siempre, con todo lo que se guarda de él. Expórtelo antes si algo puede hacer falta.</translation>
        </message>
        <message>
            <source>Show what would go…</source>
            <translation>Mostrar lo que se iría…</translation>
        </message>
        <message>
            <source>What goes and what stays</source>
            <translation>Lo que se va y lo que queda</translation>
        </message>
        <message>
            <source>Take the name out of others' texts</source>
            <translation>Quitar el nombre de los textos de otros</translation>
        </message>
        <message>
            <source>Delete the films of this player alone</source>
            <translation>Borrar los videos de este jugador solo</translation>
        </message>
        <message>
            <source>Delete the older copies</source>
            <translation>Borrar las copias anteriores</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Erase for good</source>
            <translation>Borrar para siempre</translation>
        </message>
        <message>
            <source>Erase %1 for good</source>
            <translation>Borrar a %1 para siempre</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErrorMapView</name>
        <message>
            <source>How far a ball may be off, over the table</source>
            <translation>Qué error puede tener el lugar de una bola, en toda la mesa</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
    </context>
    <context>
        <name>ferrule::EventListModel</name>
        <message>
            <source>Strike</source>
            <translation>Golpe</translation>
        </message>
        <message>
            <source>Every ball rests</source>
            <translation>Todas las bolas paradas</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmPage</name>
        <message>
            <source>Progress</source>
            <translation>Avance</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>&amp;Verlo en Revisión</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>&amp;Otra sesión</translation>
        </message>
        <message>
            <source>Film and rig belong together (sure to %1 %).</source>
            <translation>Vídeo y montaje van juntos (seguro al %1 %).</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmView</name>
        <message>
            <source>Film</source>
            <translation>Vídeo</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilterBar</name>
        <message>
            <source>Player</source>
            <translation>Jugador</translation>
        </message>
        <message>
            <source>Period</source>
            <translation>Periodo</translation>
        </message>
        <message>
            <source>All time</source>
            <translation>Todo el tiempo</translation>
        </message>
        <message>
            <source>Last 30 days</source>
            <translation>Últimos 30 días</translation>
        </message>
        <message>
            <source>Last 90 days</source>
            <translation>Últimos 90 días</translation>
        </message>
        <message>
            <source>This month</source>
            <translation>Este mes</translation>
        </message>
        <message>
            <source>Last month</source>
            <translation>Mes pasado</translation>
        </message>
        <message>
            <source>From day to day</source>
            <translation>De un día a otro</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Primer día</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Último día</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Mesa</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>Modalidad</translation>
        </message>
        <message>
            <source>Practice or match</source>
            <translation>Entrenamiento o encuentro</translation>
        </message>
        <message>
            <source>Practice and matches</source>
            <translation>Entrenamiento y encuentros</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Entrenamiento</translation>
        </message>
        <message>
            <source>Matches</source>
            <translation>Encuentros</translation>
        </message>
        <message>
            <source>Lessons</source>
            <translation>Clases</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>Todas las mesas</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>Todas las modalidades</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>Ejercicio</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>Tronera</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>Todas las troneras</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Corte</translation>
        </message>
        <message>
            <source>Way of the cue ball</source>
            <translation>Recorrido de la blanca</translation>
        </message>
        <message>
            <source>With and without drills</source>
            <translation>Con y sin ejercicios</translation>
        </message>
        <message>
            <source>Cut %1 to %2</source>
            <comment>two angles</comment>
            <translation>Corte %1 a %2</translation>
        </message>
        <message>
            <source>Every cut</source>
            <translation>Todos los cortes</translation>
        </message>
        <message>
            <source>Shorter than %1 widths</source>
            <translation>Más corto que %1 anchos</translation>
        </message>
        <message>
            <source>%1 to %2 widths</source>
            <translation>%1 a %2 anchos</translation>
        </message>
        <message>
            <source>Longer than %1 widths</source>
            <translation>Más largo que %1 anchos</translation>
        </message>
        <message>
            <source>Every distance</source>
            <translation>Todas las distancias</translation>
        </message>
        <message>
            <source>Opponent</source>
            <translation>Rival</translation>
        </message>
        <message>
            <source>Every opponent</source>
            <translation>Todos los rivales</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FirstPicture</name>
        <message>
            <source>The film's first picture</source>
            <translation>La primera imagen del video</translation>
        </message>
        <message>
            <source>No film yet</source>
            <translation>Aún no hay video</translation>
        </message>
        <message>
            <source>A film or still of the table</source>
            <translation>Un video o una foto de la mesa</translation>
        </message>
        <message>
            <source>Films and stills (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;All files (*)</source>
            <translation>Vídeos y fotos (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;Todos los archivos (*)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::GuestBar</name>
        <message>
            <source>Who the guest was</source>
            <translation>Quién era el invitado</translation>
        </message>
        <message>
            <source>A player's name, known or new</source>
            <translation>Nombre de un jugador, conocido o nuevo</translation>
        </message>
        <message>
            <source>That is who</source>
            <translation>Es esa persona</translation>
        </message>
        <message>
            <source>Stays a guest</source>
            <translation>Sigue como invitado</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>Deshacerlo</translation>
        </message>
        <message>
            <source>What %1 played is now %2's.</source>
            <comment>a guest, a player</comment>
            <translation>Lo que jugó %1 es ahora de %2.</translation>
        </message>
        <message>
            <source>%1 and the guest played together, so they are two.</source>
            <translation>%1 y el invitado jugaron juntos, así que son dos.</translation>
        </message>
        <message>
            <source>A session that is not ended knows the guest: end it first.</source>
            <translation>Una sesión sin terminar conoce al invitado: termínela antes.</translation>
        </message>
        <message>
            <source>Who was %1?</source>
            <comment>a guest</comment>
            <translation>¿Quién era %1?</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeepPage</name>
        <message>
            <source>This set-up</source>
            <translation>Esta configuración</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>En uso</translation>
        </message>
        <message>
            <source>&amp;Save into a folder…</source>
            <translation>&amp;Guardar en una carpeta…</translation>
        </message>
        <message>
            <source>&amp;Check again with a film…</source>
            <translation>&amp;Comprobar de nuevo con un video…</translation>
        </message>
        <message>
            <source>Start a &amp;new set-up</source>
            <translation>Empezar una &amp;nueva configuración</translation>
        </message>
        <message>
            <source>table.json, lens.json and rig.json are written. Check again after another day, another film, or a ladder against the camera: it takes less than a minute.</source>
            <translation>Se escriben table.json, lens.json y rig.json. Compruebe de nuevo otro día, con otro video o si una escalera golpeó la cámara: lleva menos de un minuto.</translation>
        </message>
        <message>
            <source>Look at every fixing again twice a year. A loose bracket, a hot smell or a rig that wanders means: power off, and nobody plays under it. A projector hangs by the same rules as a camera; never look into its beam, and switch it to black when somebody bends over the table. Local codes come first.</source>
            <translation>Revise todas las fijaciones dos veces al año. Un soporte flojo, olor a quemado o un montaje que se desplaza significan: corte la corriente y que nadie juegue debajo. Un proyector se cuelga con las mismas reglas que una cámara; no mire nunca a su haz y póngalo en negro cuando alguien se incline sobre la mesa. Las normas locales tienen prioridad.</translation>
        </message>
        <message>
            <source>Save the set-up into a folder</source>
            <translation>Guardar la configuración en una carpeta</translation>
        </message>
        <message>
            <source>Start a new set-up</source>
            <translation>Empezar una nueva configuración</translation>
        </message>
        <message>
            <source>What was put in for this one is forgotten; files that were saved into a folder stay. Start a new set-up?</source>
            <translation>Se olvida lo que se anotó para esta; los archivos guardados en una carpeta se conservan. ¿Empezar una nueva configuración?</translation>
        </message>
        <message>
            <source>not saved yet</source>
            <translation>aún no guardada</translation>
        </message>
        <message>
            <source>no rig yet</source>
            <translation>aún no hay montaje</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>ninguno todavía</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>table, its rig file</comment>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeyPage</name>
        <message>
            <source>Keys</source>
            <translation>Teclas</translation>
        </message>
        <message>
            <source>Wheel: enlarge. Drag: move, or scrub on the time line. Double click: whole table.</source>
            <translation>Rueda: ampliar. Arrastrar: mover, o recorrer la línea de tiempo. Doble clic: mesa entera.</translation>
        </message>
        <message>
            <source>Menu</source>
            <translation>Menú</translation>
        </message>
        <message>
            <source>Action</source>
            <translation>Acción</translation>
        </message>
        <message>
            <source>What it does</source>
            <translation>Qué hace</translation>
        </message>
        <message>
            <source>Find an action</source>
            <translation>Buscar una acción</translation>
        </message>
        <message>
            <source>Find: a word, or a key such as Ctrl</source>
            <translation>Buscar: una palabra, o una tecla como Ctrl</translation>
        </message>
    </context>
    <context>
        <name>ferrule::Legend</name>
        <message>
            <source>Solid: the way as it was measured, filled: where the taken shot would leave the cue ball. Dashed: the suggested shot, hatched: its leave. Dotted: predicted while the ball was hidden. Dot: a contact.</source>
            <translation>Continua: el recorrido medido; relleno: donde el tiro jugado dejaría la blanca. Guiones: el tiro sugerido; rayado: la posición que deja. Puntos: previsto mientras la bola estaba tapada. Punto: un contacto.</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>the shot as it was played</comment>
            <translation>jugado</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>the shot that was ranked first</comment>
            <translation>sugerido</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LensPage</name>
        <message>
            <source>&amp;No board: take the lens from the straightness of the cushions</source>
            <translation>&amp;Sin tablero: obtener la lente de la rectitud de las bandas</translation>
        </message>
        <message>
            <source>Parameter</source>
            <translation>Parámetro</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Valor</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Incertidumbre</translation>
        </message>
        <message>
            <source>The lens's parameters</source>
            <translation>Los parámetros de la lente</translation>
        </message>
        <message>
            <source>ChArUco: squares with markers</source>
            <translation>ChArUco: cuadros con marcadores</translation>
        </message>
        <message>
            <source>Plain chessboard</source>
            <translation>Ajedrez simple</translation>
        </message>
        <message>
            <source>&amp;Board</source>
            <translation>&amp;Tablero</translation>
        </message>
        <message>
            <source>Columns of the board</source>
            <translation>Columnas del tablero</translation>
        </message>
        <message>
            <source>Rows of the board</source>
            <translation>Filas del tablero</translation>
        </message>
        <message>
            <source>Side of a square</source>
            <translation>Lado de un cuadro</translation>
        </message>
        <message>
            <source>Side of a marker</source>
            <translation>Lado de un marcador</translation>
        </message>
        <message>
            <source>Set of markers</source>
            <translation>Juego de marcadores</translation>
        </message>
        <message>
            <source>Counts</source>
            <translation>Cantidades</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papel</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Carta</translation>
        </message>
        <message>
            <source>Tabloid</source>
            <translation>Tabloide</translation>
        </message>
        <message>
            <source>Make the &amp;sheet (PDF)…</source>
            <translation>Hacer la &amp;hoja (PDF)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Impresión</translation>
        </message>
        <message>
            <source>The line across, as it measures on the paper</source>
            <translation>La línea horizontal, tal como mide en el papel</translation>
        </message>
        <message>
            <source>The line down, as it measures on the paper</source>
            <translation>La línea vertical, tal como mide en el papel</translation>
        </message>
        <message>
            <source>across,</source>
            <translation>de ancho,</translation>
        </message>
        <message>
            <source>down; 100 mm when the printer is true</source>
            <translation>de alto; 100 mm si la impresora es exacta</translation>
        </message>
        <message>
            <source>Lines on it</source>
            <translation>Líneas impresas</translation>
        </message>
        <message>
            <source>Glue the print to something flat. Take 15 to 30 sharp stills that together fill the picture to its corners, the board tilted in many of them. Drop files or a folder here.</source>
            <translation>Pegue la hoja impresa sobre algo plano. Tome de 15 a 30 fotos nítidas que juntas llenen la imagen hasta las esquinas, con el tablero inclinado en muchas de ellas. Suelte aquí archivos o una carpeta.</translation>
        </message>
        <message>
            <source>&amp;Add stills…</source>
            <translation>&amp;Añadir fotos…</translation>
        </message>
        <message>
            <source>Add a fol&amp;der…</source>
            <translation>Añadir una ca&amp;rpeta…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Quitar</translation>
        </message>
        <message>
            <source>&amp;Calibrate</source>
            <translation>&amp;Calibrar</translation>
        </message>
        <message>
            <source>&amp;Use a lens file…</source>
            <translation>&amp;Usar un archivo de lente…</translation>
        </message>
        <message>
            <source>Still</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>Board</source>
            <translation>Tablero</translation>
        </message>
        <message>
            <source>Edges</source>
            <translation>Bordes</translation>
        </message>
        <message>
            <source>rms</source>
            <translation>rms</translation>
        </message>
        <message>
            <source>Stills of the board</source>
            <translation>Fotos del tablero</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;All files (*)</source>
            <translation>Imágenes (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>A folder of stills</source>
            <translation>Una carpeta de fotos</translation>
        </message>
        <message>
            <source>Use a lens file</source>
            <translation>Usar un archivo de lente</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>Archivos de lente (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>Hacer la hoja</translation>
        </message>
        <message>
            <source>board.pdf</source>
            <translation>board.pdf</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The board is in %1; print it at 100 % and measure its lines.</source>
            <translation>El tablero está en %1; imprímalo al 100 % y mida sus líneas.</translation>
        </message>
        <message>
            <source>squares of</source>
            <translation>cuadros de</translation>
        </message>
        <message>
            <source>inner corners, squares of</source>
            <translation>esquinas interiores, cuadros de</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>found, but does not fit the others</source>
            <translation>encontrado, pero no concuerda con los demás</translation>
        </message>
        <message>
            <source>How wide the squares' edges are; less than 1 px is sharp</source>
            <translation>Qué anchura tienen los bordes de los cuadros; menos de 1 px es nítido</translation>
        </message>
        <message>
            <source>Where the board was in the picture; hatched: nowhere yet.</source>
            <translation>Dónde estuvo el tablero en la imagen; rayado: aún en ninguna foto.</translation>
        </message>
        <message numerus="yes">
            <source>%n still(s) used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</source>
            <translation>
                <numerusform>%n foto usada; el tablero estuvo en el %1 % de la imagen, hasta el %2 % del camino a sus esquinas.</numerusform>
                <numerusform>%n fotos usadas; el tablero estuvo en el %1 % de la imagen, hasta el %2 % del camino a sus esquinas.</numerusform>
            </translation>
        </message>
        <message>
            <source>The lens will come from the cushions with the rig; a board would make places several millimetres better.</source>
            <translation>La lente saldrá de las bandas junto con el montaje; un tablero mejoraría los lugares en varios milímetros.</translation>
        </message>
        <message>
            <source>Lens of %1 at %2 × %3 px, %4, rms %5 px.</source>
            <translation>Lente de %1 con %2 × %3 px, %4, rms %5 px.</translation>
        </message>
        <message>
            <source>No lens yet.</source>
            <translation>Aún no hay lente.</translation>
        </message>
        <message>
            <source>without a board</source>
            <translation>sin tablero</translation>
        </message>
        <message>
            <source>the lines on the print</source>
            <translation>líneas de la impresión</translation>
        </message>
        <message>
            <source>the board</source>
            <translation>tablero</translation>
        </message>
        <message>
            <source>Markers</source>
            <translation>Marcadores</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesList</name>
        <message>
            <source>Noses, sights and pockets, and how far each is off</source>
            <translation>Narices, miras y troneras, y cuánto se desvía cada una</translation>
        </message>
        <message>
            <source>Nose, sight or pocket</source>
            <translation>Nariz, mira o tronera</translation>
        </message>
        <message>
            <source>Known from</source>
            <translation>Conocido por</translation>
        </message>
        <message>
            <source>Off by</source>
            <translation>Desvío</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>by hand</source>
            <translation>a mano</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>no encontrado</translation>
        </message>
        <message>
            <source>the picture</source>
            <translation>la imagen</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>no está</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesPanel</name>
        <message>
            <source>Look at the &amp;lines, adjust them by hand…</source>
            <translation>Ver las &amp;líneas, ajustarlas a mano…</translation>
        </message>
        <message>
            <source>&amp;As they were found</source>
            <translation>Como se &amp;encontraron</translation>
        </message>
        <message>
            <source>The sight or pocket counts where it shows (insert)</source>
            <translation>La mira o la tronera cuenta donde se muestra (insertar)</translation>
        </message>
        <message>
            <source>The sight or pocket no longer counts (delete)</source>
            <translation>La mira o la tronera ya no cuenta (suprimir)</translation>
        </message>
        <message>
            <source>the lines as found</source>
            <translation>líneas como se encontraron</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a cushion</comment>
            <translation>%1: colocada a mano</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>%1: colocada a mano</translation>
        </message>
        <message>
            <source>%1 is not there</source>
            <comment>a sight or pocket</comment>
            <translation>%1: no está</translation>
        </message>
        <message>
            <source>&amp;Look for them again</source>
            <translation>Vo&amp;lver a buscarlas</translation>
        </message>
        <message>
            <source>The rig is made from the noses of the cushions, the sights and the pockets, as the picture shows them; where one is missed or mistaken, place it by hand.</source>
            <translation>El montaje se calcula con las narices de las bandas, las miras y las troneras, como las muestra la imagen; donde falte una o esté confundida, colóquela a mano.</translation>
        </message>
        <message numerus="yes">
            <source>%n place(s) are set by hand.</source>
            <translation>
                <numerusform>%n punto está colocado a mano.</numerusform>
                <numerusform>%n puntos están colocados a mano.</numerusform>
            </translation>
        </message>
        <message>
            <source>Drag a nose's handles to where its cloth ends above the bed, spread from end to end and a hand's breadth from the pockets; drag a sight's diamond onto its middle, a pocket's ring onto the middle of its opening. Arrow keys move what is chosen, page up and page down go from one to the next.</source>
            <translation>Arrastre los tiradores de una nariz hasta donde su paño termina sobre la mesa, repartidos de punta a punta y a un palmo de las troneras; el rombo de una mira hasta su centro, el anillo de una tronera hasta el centro de su boca. Las flechas mueven lo elegido; retroceder y avanzar página van de uno a otro.</translation>
        </message>
        <message numerus="yes">
            <source>%n cushion(s) were not found (dashed): place them.</source>
            <translation>
                <numerusform>%n banda no se encontró (a trazos): colóquela.</numerusform>
                <numerusform>%n bandas no se encontraron (a trazos): colóquelas.</numerusform>
            </translation>
        </message>
        <message>
            <source>Working out how well they agree…</source>
            <translation>Calculando cuánto concuerdan…</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>The noses agree to %1 (rms).</source>
            <translation>Las narices concuerdan en %1 (eficaz).</translation>
        </message>
        <message numerus="yes">
            <source>%n sight(s) agree to %1 (rms) along their rails; furthest off, by %2, lies %3.</source>
            <translation>
                <numerusform>%n mira concuerda en %1 (eficaz) a lo largo del marco; la más desviada, por %2: %3.</numerusform>
                <numerusform>%n miras concuerdan en %1 (eficaz) a lo largo de los marcos; la más desviada, por %2: %3.</numerusform>
            </translation>
        </message>
        <message>
            <source>No sight was found; with them, places would be surer.</source>
            <translation>No se encontró ninguna mira; con ellas, los lugares serían más seguros.</translation>
        </message>
        <message>
            <source>&amp;Count it here</source>
            <translation>Contarla &amp;aquí</translation>
        </message>
        <message>
            <source>It is &amp;not there</source>
            <translation>&amp;No está</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesView</name>
        <message>
            <source>%1, place %2 of %3</source>
            <comment>a cushion</comment>
            <translation>%1, punto %2 de %3</translation>
        </message>
        <message>
            <source>The cushions' noses, the sights and the pockets in the film's picture</source>
            <translation>Las narices de las bandas, las miras y las troneras en la imagen del video</translation>
        </message>
        <message>
            <source>found</source>
            <comment>a sight or pocket</comment>
            <translation>encontrada</translation>
        </message>
        <message>
            <source>placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>colocada a mano</translation>
        </message>
        <message>
            <source>not there</source>
            <comment>a sight or pocket</comment>
            <translation>no está</translation>
        </message>
        <message>
            <source>not found</source>
            <comment>a sight or pocket</comment>
            <translation>no encontrada</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LivePage</name>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>&amp;Verlo en Revisión</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>&amp;Otra sesión</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MainWindow</name>
        <message>
            <source>&amp;Wide list of places</source>
            <translation>Lista a&amp;ncha de secciones</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>Lista es&amp;trecha de secciones</translation>
        </message>
        <message>
            <source>Se&amp;ttings</source>
            <translation>&amp;Ajustes</translation>
        </message>
        <message>
            <source>Open a record</source>
            <translation>Abrir un registro</translation>
        </message>
        <message>
            <source>Records (*.sqlite);;All files (*)</source>
            <translation>Registros (*.sqlite);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Open &amp;again</source>
            <translation>Abrir de &amp;nuevo</translation>
        </message>
        <message>
            <source>No record was opened yet</source>
            <translation>Aún no se abrió ningún registro</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>Something is being measured. Choose the language when it is done.</source>
            <translation>Se está midiendo algo. Elija el idioma cuando termine.</translation>
        </message>
        <message>
            <source>Take in another record</source>
            <translation>Incorporar otro registro</translation>
        </message>
        <message>
            <source>Something is being measured. Take the record in when it is done.</source>
            <translation>Se está midiendo algo. Incorpore el registro cuando termine.</translation>
        </message>
        <message>
            <source>Taking in %1…</source>
            <translation>Incorporando %1…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MapPage</name>
        <message>
            <source>Comes from</source>
            <translation>Procede de</translation>
        </message>
        <message>
            <source>Standard uncertainty</source>
            <translation>Incertidumbre estándar</translation>
        </message>
        <message>
            <source>Where the uncertainty comes from, at the marked place</source>
            <translation>De dónde procede la incertidumbre en el lugar marcado</translation>
        </message>
        <message>
            <source>What it is worth in a shot</source>
            <translation>Qué supone en un tiro</translation>
        </message>
        <message>
            <source>&amp;Pocket</source>
            <translation>&amp;Tronera</translation>
        </message>
        <message>
            <source>The object ball, toward the foot</source>
            <translation>La bola objetivo, hacia el pie</translation>
        </message>
        <message>
            <source>The object ball, to the left</source>
            <translation>La bola objetivo, hacia la izquierda</translation>
        </message>
        <message>
            <source>Object ball &amp;x</source>
            <translation>Bola objetivo &amp;x</translation>
        </message>
        <message>
            <source>Object ball &amp;y</source>
            <translation>Bola objetivo &amp;y</translation>
        </message>
        <message>
            <source>Cut angle; less than 0: to the right</source>
            <translation>Ángulo de corte; menos de 0: a la derecha</translation>
        </message>
        <message>
            <source>&amp;Cut</source>
            <translation>&amp;Corte</translation>
        </message>
        <message>
            <source>How far the cue ball rolls before it meets the object ball</source>
            <translation>Cuánto rueda la blanca hasta tocar la bola objetivo</translation>
        </message>
        <message>
            <source>Cue ball a&amp;way</source>
            <translation>&amp;Distancia de la blanca</translation>
        </message>
        <message>
            <source>Places that are off by so much</source>
            <translation>Lugares con este error</translation>
        </message>
        <message>
            <source>If places were &amp;off by</source>
            <translation>Lugares con un &amp;error de</translation>
        </message>
        <message>
            <source>The camera does not see this place.</source>
            <translation>La cámara no ve este lugar.</translation>
        </message>
        <message>
            <source>There is no rig yet.</source>
            <translation>Aún no hay montaje.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>At x %1, y %2: within %3 (95 %)</source>
            <translation>En x = %1, y = %2: a menos de %3 (95 %)</translation>
        </message>
        <message>
            <source>All together</source>
            <translation>Todo junto</translation>
        </message>
        <message>
            <source>One of the balls would lie off the table; choose another place, cut or distance.</source>
            <translation>Una de las bolas quedaría fuera de la mesa; elija otro lugar, corte o distancia.</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <comment>component, its share</comment>
            <translation>%1 %2 %</translation>
        </message>
        <message>
            <source>It comes from: %1. %2</source>
            <translation>Procede de: %1. %2</translation>
        </message>
        <message>
            <source>With places so far off the cue ball may miss the object ball altogether.</source>
            <translation>Con lugares tan inexactos la blanca puede no tocar siquiera la bola objetivo.</translation>
        </message>
        <message>
            <source>A ball lies within so many millimetres of its place (95 %)</source>
            <translation>Una bola está a menos de estos milímetros de su lugar (95 %)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasurePicture</name>
        <message>
            <source>Where to measure the table: from nose to nose, and both diagonals</source>
            <translation>Dónde medir la mesa: de nariz a nariz, y ambas diagonales</translation>
        </message>
        <message>
            <source>Where to measure the tags: their corners from the table's middle</source>
            <translation>Dónde medir las marcas: sus esquinas desde el centro de la mesa</translation>
        </message>
        <message>
            <source>length</source>
            <translation>largo</translation>
        </message>
        <message>
            <source>width</source>
            <translation>ancho</translation>
        </message>
        <message>
            <source>diagonal A</source>
            <translation>diagonal A</translation>
        </message>
        <message>
            <source>diagonal B</source>
            <translation>diagonal B</translation>
        </message>
        <message>
            <source>head</source>
            <translation>cabecera</translation>
        </message>
        <message>
            <source>x</source>
            <translation>x</translation>
        </message>
        <message>
            <source>y</source>
            <translation>y</translation>
        </message>
        <message>
            <source>the table's middle</source>
            <translation>centro de la mesa</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuredShotList</name>
        <message>
            <source>Shots measured so far</source>
            <translation>Tiros medidos hasta ahora</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuringPictures</name>
        <message>
            <source>Picture of the film with the balls that were found</source>
            <translation>Imagen del video con las bolas encontradas</translation>
        </message>
    </context>
    <context>
        <name>ferrule::NoteSection</name>
        <message>
            <source>Notes about this player</source>
            <translation>Notas sobre este jugador</translation>
        </message>
        <message>
            <source>A new note</source>
            <translation>Una nota nueva</translation>
        </message>
        <message>
            <source>Who writes</source>
            <translation>Quién escribe</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Su nombre</translation>
        </message>
        <message>
            <source>Stands beside notes and consents that you write down</source>
            <translation>Figura junto a las notas y consentimientos que usted anota</translation>
        </message>
        <message>
            <source>&amp;Written by</source>
            <translation>Escri&amp;to por</translation>
        </message>
        <message>
            <source>Add the note</source>
            <translation>Añadir la nota</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Remove the chosen note</source>
            <translation>Quitar la nota elegida</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PeopleDesk</name>
        <message>
            <source>add %1</source>
            <translation>añadir a %1</translation>
        </message>
        <message>
            <source>%1 has played meanwhile and stays.</source>
            <translation>%1 ha jugado entretanto y se queda.</translation>
        </message>
        <message>
            <source>change %1</source>
            <translation>cambiar a %1</translation>
        </message>
        <message>
            <source>rename %1 to %2</source>
            <translation>cambiar el nombre de %1 a %2</translation>
        </message>
        <message>
            <source>note consent of %1</source>
            <translation>anotar el consentimiento de %1</translation>
        </message>
        <message>
            <source>withdraw consent of %1</source>
            <translation>retirar el consentimiento de %1</translation>
        </message>
        <message>
            <source>note about %1</source>
            <translation>nota sobre %1</translation>
        </message>
        <message>
            <source>remove a note about %1</source>
            <translation>quitar una nota sobre %1</translation>
        </message>
        <message>
            <source>make %1 and %2 one</source>
            <translation>unir a %1 y %2</translation>
        </message>
        <message>
            <source>%1 and %2 played in one session, "%3", so they are two people.</source>
            <translation>%1 y %2 jugaron en una misma sesión, «%3», así que son dos personas.</translation>
        </message>
        <message>
            <source>%1 plays in the session that is under way; end it first.</source>
            <translation>%1 juega en la sesión en curso; termínela primero.</translation>
        </message>
        <message>
            <source>%1 plays in a session that is under way; go on with it in Session and end it first.</source>
            <translation>%1 juega en una sesión en curso; continúela en Sesión y termínela primero.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PersonForm</name>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Playing hand</source>
            <translation>Mano de juego</translation>
        </message>
        <message>
            <source>Playing &amp;hand</source>
            <translation>&amp;Mano de juego</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Grupos</translation>
        </message>
        <message>
            <source>Such as juniors, Tuesday</source>
            <translation>Como juveniles, martes</translation>
        </message>
        <message>
            <source>With commas between; a person may be in several</source>
            <translation>Con comas en medio; una persona puede estar en varios</translation>
        </message>
        <message>
            <source>G&amp;roups</source>
            <translation>G&amp;rupos</translation>
        </message>
        <message>
            <source>&amp;Minor: a parent or guardian gives consent</source>
            <translation>M&amp;enor: consiente un padre, madre o tutor</translation>
        </message>
        <message>
            <source>Minor</source>
            <translation>Menor</translation>
        </message>
        <message>
            <source>G&amp;uest: who it is will be known later</source>
            <translation>In&amp;vitado: más tarde se sabrá quién es</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>Invitado</translation>
        </message>
        <message>
            <source>Who it is</source>
            <translation>Quién es</translation>
        </message>
        <message>
            <source>Give over</source>
            <translation>Dar</translation>
        </message>
        <message>
            <source>Give all shots to that player</source>
            <translation>Dar todos los tiros a ese jugador</translation>
        </message>
        <message>
            <source>All shots, sessions, notes and consents go to that player; can be undone</source>
            <translation>Todos los tiros, sesiones, notas y consentimientos pasan a ese jugador; se puede deshacer</translation>
        </message>
        <message>
            <source>This &amp;is</source>
            <translation>Es&amp;te es</translation>
        </message>
        <message>
            <source>Same person &amp;as</source>
            <translation>La mi&amp;sma persona que</translation>
        </message>
        <message>
            <source>Choose a player</source>
            <translation>Elegir un jugador</translation>
        </message>
        <message>
            <source>A player needs a name; the old one stays.</source>
            <translation>Un jugador necesita un nombre; queda el anterior.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlaceList</name>
        <message>
            <source>Places</source>
            <translation>Secciones</translation>
        </message>
        <message>
            <source>Show words</source>
            <translation>Mostrar palabras</translation>
        </message>
        <message>
            <source>Show icons only</source>
            <translation>Mostrar solo iconos</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlanView</name>
        <message>
            <source>Plan of the table</source>
            <translation>Plano de la mesa</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlayersPlace</name>
        <message>
            <source>Players</source>
            <translation>Jugadores</translation>
        </message>
        <message>
            <source>Search for a player or group</source>
            <translation>Buscar un jugador o un grupo</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Grupo</translation>
        </message>
        <message>
            <source>Players of the record</source>
            <translation>Jugadores del registro</translation>
        </message>
        <message>
            <source>Nobody passes the search and the group.</source>
            <translation>Nadie responde a la búsqueda y al grupo.</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Persona</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Consentimiento</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notas</translation>
        </message>
        <message>
            <source>Choose a player on the left.</source>
            <translation>Elija un jugador a la izquierda.</translation>
        </message>
        <message>
            <source>Add a player</source>
            <translation>Añadir un jugador</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>Invitado</translation>
        </message>
        <message>
            <source>New player</source>
            <translation>Jugador nuevo</translation>
        </message>
        <message>
            <source>Nobody is in %1 yet. Add a player first: name, groups and consent; then sessions and films know them by name.</source>
            <translation>Aún no hay nadie en %1. Añada primero un jugador: nombre, grupos y consentimiento; así las sesiones y los videos lo conocerán por su nombre.</translation>
        </message>
        <message>
            <source>Every group</source>
            <translation>Todos los grupos</translation>
        </message>
        <message>
            <source>Export and erase</source>
            <translation>Exportar y borrar</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>Escrito: %1</translation>
        </message>
        <message>
            <source>Choose the player who is to be exported.</source>
            <translation>Elija al jugador que se va a exportar.</translation>
        </message>
        <message>
            <source>Export the player to a folder</source>
            <translation>Exportar al jugador a una carpeta</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProgressPlace</name>
        <message>
            <source>Progress</source>
            <translation>Progreso</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Gráficos</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>Aún no ha jugado nadie en %1. Juegue una sesión con nombres o abra otro registro.</translation>
        </message>
        <message>
            <source>Co&amp;mpare with</source>
            <translation>Co&amp;mparar con</translation>
        </message>
        <message>
            <source>Show two players or two periods side by side</source>
            <translation>Mostrar dos jugadores o dos periodos lado a lado</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>Qué conviene trabajar</translation>
        </message>
        <message>
            <source>What the figures rest on</source>
            <translation>En qué se apoyan los gráficos</translation>
        </message>
        <message>
            <source>What to work on and what the figures rest on</source>
            <translation>Qué conviene trabajar y en qué se apoyan los gráficos</translation>
        </message>
        <message>
            <source>What is pointed at</source>
            <translation>Lo que se señala</translation>
        </message>
        <message>
            <source>Progress needs shots: play a session, or open a record.</source>
            <translation>El progreso necesita tiros: juegue una sesión o abra un registro.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Abrir un registro…</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection. Choose a longer period.</source>
            <translation>No hay ningún tiro de este jugador en esta selección. Elija un periodo más largo.</translation>
        </message>
        <message>
            <source>Choose a chart first: click it, or go to it with the Tab key.</source>
            <translation>Elija antes un gráfico: haga clic en él o llegue a él con el tabulador.</translation>
        </message>
        <message>
            <source>Export the chart</source>
            <translation>Exportar el gráfico</translation>
        </message>
        <message>
            <source>chart.svg</source>
            <translation>chart.svg</translation>
        </message>
        <message>
            <source>Pictures (*.svg *.png);;Numbers (*.csv)</source>
            <translation>Imágenes (*.svg *.png);;Números (*.csv)</translation>
        </message>
        <message>
            <source>The chart is in %1.</source>
            <translation>El gráfico está en %1.</translation>
        </message>
        <message>
            <source>Reading the record…</source>
            <translation>Leyendo el registro…</translation>
        </message>
        <message>
            <source>Working it out…</source>
            <translation>Calculando…</translation>
        </message>
        <message>
            <source>Point at a part of a chart for its numbers; click it for the shots behind it.</source>
            <translation>Señale una parte de un gráfico para ver sus números; haga clic en ella para ver sus tiros.</translation>
        </message>
        <message>
            <source>Choose a part of a chart first: click it, or go to it with the arrow keys.</source>
            <translation>Elija antes una parte de un gráfico: haga clic en ella o llegue a ella con las teclas de flecha.</translation>
        </message>
        <message>
            <source>There is no shot behind this.</source>
            <translation>No hay ningún tiro detrás de esto.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorDesk</name>
        <message>
            <source>The set-up in use has no projector; find where its light falls in Set-up, step Projector, and save the set-up.</source>
            <translation>La configuración en uso no tiene proyector; busque dónde cae su luz en Configuración, paso Proyector, y guarde la configuración.</translation>
        </message>
        <message>
            <source>No screen beside the window's own has the %1 × %2 px that the projector was found with; connect it, or choose its screen in Set-up, step Projector, and find it anew.</source>
            <translation>Ninguna pantalla aparte de la de la ventana tiene los %1 × %2 px con que se encontró el proyector; conéctelo, o elija su pantalla en Configuración, paso Proyector, y búsquelo de nuevo.</translation>
        </message>
        <message>
            <source>Never look into the beam; B makes it black, Escape closes it.</source>
            <translation>No mire nunca al haz; B lo pone en negro, Escape lo cierra.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorPage</name>
        <message>
            <source>Never look into the beam, and let nobody bend into it: black is one key away (B). The pictures change in slow fades and nothing blinks; if light that moves troubles somebody, leave it black. A projector over a table needs fixings rated for its weight, a steel tether to a second point, and mains work by a licensed electrician; local codes come first.</source>
            <translation>No mire nunca al haz ni deje que nadie se incline hacia él: el negro está a una tecla (B). Las imágenes cambian con fundidos lentos y nada parpadea; si la luz en movimiento molesta a alguien, déjelo en negro. Un proyector sobre una mesa necesita fijaciones aptas para su peso, un cable de acero a un segundo punto e instalación eléctrica hecha por un electricista autorizado; las normas locales tienen prioridad.</translation>
        </message>
        <message>
            <source>&amp;Screen of the projector</source>
            <translation>&amp;Pantalla del proyector</translation>
        </message>
        <message>
            <source>&amp;Black</source>
            <translation>&amp;Negro</translation>
        </message>
        <message>
            <source>&amp;Grid of tags</source>
            <translation>&amp;Cuadrícula de marcas</translation>
        </message>
        <message>
            <source>&amp;Lines and spots of the table</source>
            <translation>&amp;Líneas y puntos de la mesa</translation>
        </message>
        <message>
            <source>Clear the table, darken the room, show the grid and take a still of it with the camera of this rig, in its own picture size.</source>
            <translation>Despeje la mesa, oscurezca la sala, muestre la cuadrícula y tome una foto de ella con la cámara de este montaje, en su propio tamaño de imagen.</translation>
        </message>
        <message>
            <source>&amp;Find the projector in a still…</source>
            <translation>&amp;Buscar el proyector en una foto…</translation>
        </message>
        <message>
            <source>A still of the grid on the cloth</source>
            <translation>Una foto de la cuadrícula sobre el paño</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg);;All files (*)</source>
            <translation>Imágenes (*.png *.jpg *.jpeg);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>%1: %2 × %3 px</source>
            <comment>a screen</comment>
            <translation>%1: %2 × %3 px</translation>
        </message>
        <message>
            <source>It is not known yet where the projector's light falls; show the grid and find it in a still.</source>
            <translation>Aún no se sabe dónde cae la luz del proyector; muestre la cuadrícula y búsquelo en una foto.</translation>
        </message>
        <message>
            <source>The projector was found with a picture of %1 × %2 px and this screen has %3 × %4 px; choose its screen, or show the grid again and find it anew.</source>
            <translation>El proyector se encontró con una imagen de %1 × %2 px y esta pantalla tiene %3 × %4 px; elija su pantalla, o muestre otra vez la cuadrícula y búsquelo de nuevo.</translation>
        </message>
        <message>
            <source>No projector yet; without one this step is not needed.</source>
            <translation>Aún no hay proyector; sin él este paso no hace falta.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Light lies true to %1 (rms) on the cloth, by tags that had no part in it (%2 tags, %3 × %4 px, %5).</source>
            <translation>La luz cae con una exactitud de %1 (rms) en el paño, según marcas que no intervinieron en el cálculo (%2 marcas, %3 × %4 px, %5).</translation>
        </message>
        <message>
            <source>&amp;Close its screen</source>
            <translation>Ce&amp;rrar su pantalla</translation>
        </message>
        <message>
            <source>A &amp;position file…</source>
            <translation>Un archi&amp;vo de posición…</translation>
        </message>
        <message>
            <source>A position file</source>
            <translation>Un archivo de posición</translation>
        </message>
        <message>
            <source>Positions (*.json);;All files (*)</source>
            <translation>Posiciones (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>grid of tags</source>
            <translation>cuadrícula de marcas</translation>
        </message>
        <message>
            <source>lines and spots</source>
            <translation>líneas y puntos</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorScreen</name>
        <message>
            <source>Projector</source>
            <translation>Proyector</translation>
        </message>
        <message>
            <source>The projector's picture; Escape closes it, B makes it black</source>
            <translation>La imagen del proyector; Escape la cierra, B la pone en negro</translation>
        </message>
    </context>
    <context>
        <name>ferrule::QuestionPanel</name>
        <message>
            <source>What does %1 choose?</source>
            <comment>a player</comment>
            <translation>¿Qué elige %1?</translation>
        </message>
        <message>
            <source>Shot %1: %2</source>
            <comment>number, a question</comment>
            <translation>Tiro %1: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n more shot(s) wait for an answer.</source>
            <translation>
                <numerusform>%n tiro más espera respuesta.</numerusform>
                <numerusform>%n tiros más esperan respuesta.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::RemarksSection</name>
        <message>
            <source>Add a tag</source>
            <translation>Añadir una etiqueta</translation>
        </message>
        <message>
            <source>Notes on the shot; Delete takes one away</source>
            <translation>Notas sobre el tiro; Supr quita una</translation>
        </message>
        <message>
            <source>Take the note away</source>
            <translation>Quitar la nota</translation>
        </message>
        <message>
            <source>Write a note</source>
            <translation>Escribir una nota</translation>
        </message>
        <message>
            <source>Who writes and corrects</source>
            <translation>Quién escribe y corrige</translation>
        </message>
        <message>
            <source>Take the tag away: %1</source>
            <translation>Quitar la etiqueta: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>By</source>
            <translation>De</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReportsPlace</name>
        <message>
            <source>Reports</source>
            <translation>Informes</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>Aún no ha jugado nadie en %1. Juegue una sesión con nombres o abra otro registro.</translation>
        </message>
        <message>
            <source>The student's language</source>
            <translation>El idioma del alumno</translation>
        </message>
        <message>
            <source>The student's &amp;language</source>
            <translation>El &amp;idioma del alumno</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papel</translation>
        </message>
        <message>
            <source>A4</source>
            <translation>A4</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Carta</translation>
        </message>
        <message>
            <source>Pa&amp;per</source>
            <translation>&amp;Papel</translation>
        </message>
        <message>
            <source>Coach's note</source>
            <translation>Nota del entrenador</translation>
        </message>
        <message>
            <source>Empty: lines to write on</source>
            <translation>Vacía: líneas para escribir</translation>
        </message>
        <message>
            <source>Coach's &amp;note</source>
            <translation>&amp;Nota del entrenador</translation>
        </message>
        <message>
            <source>As PDF or HTML to hand out, or its numbers as CSV.</source>
            <translation>Como PDF o HTML para entregar, o sus números como CSV.</translation>
        </message>
        <message>
            <source>A report needs shots: play a session, or open a record.</source>
            <translation>Un informe necesita tiros: juegue una sesión o abra un registro.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Abrir un registro…</translation>
        </message>
        <message>
            <source>There is no report yet.</source>
            <translation>Aún no hay informe.</translation>
        </message>
        <message>
            <source>report-%1.pdf</source>
            <translation>report-%1.pdf</translation>
        </message>
        <message>
            <source>Export the report</source>
            <translation>Exportar el informe</translation>
        </message>
        <message>
            <source>PDF (*.pdf);;HTML (*.html);;Numbers (*.csv)</source>
            <translation>PDF (*.pdf);;HTML (*.html);;Números (*.csv)</translation>
        </message>
        <message>
            <source>%1 ends in none of .pdf, .html and .csv; name the file so that it does.</source>
            <translation>%1 no termina en .pdf, .html ni .csv; ponga al archivo un nombre que termine así.</translation>
        </message>
        <message>
            <source>The report is in %1.</source>
            <translation>El informe está en %1.</translation>
        </message>
        <message>
            <source>No installed font has these letters, so they print as boxes: %1.</source>
            <translation>Ningún tipo de letra instalado tiene estas letras, así que se imprimen como recuadros: %1.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReviewPlace</name>
        <message>
            <source>Review</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Sessions, frames and shots</source>
            <translation>Sesiones, partidas y tiros</translation>
        </message>
        <message>
            <source>Find the film…</source>
            <translation>Buscar el video…</translation>
        </message>
        <message>
            <source>Open a record to look at its shots.</source>
            <translation>Abra un registro para ver sus tiros.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Abrir un registro…</translation>
        </message>
        <message>
            <source>Look at the demo</source>
            <translation>Ver la demostración</translation>
        </message>
        <message>
            <source>Filter the shots first; the list is then played from the chosen shot on.</source>
            <translation>Filtre antes los tiros; la lista se reproduce entonces desde el tiro elegido.</translation>
        </message>
        <message>
            <source>%1 holds no session yet.</source>
            <translation>%1 no contiene aún ninguna sesión.</translation>
        </message>
        <message>
            <source>Choose a shot to see its film.</source>
            <translation>Elija un tiro para ver su video.</translation>
        </message>
        <message>
            <source>This frame was put in by hand: it has no film. The plan shows it.</source>
            <translation>Esta partida se anotó a mano: no tiene video. El plano la muestra.</translation>
        </message>
        <message>
            <source>%1 The plan still shows what was measured.</source>
            <translation>%1 El plano sigue mostrando lo que se midió.</translation>
        </message>
        <message>
            <source>Reading the film…</source>
            <translation>Leyendo el video…</translation>
        </message>
        <message>
            <source>Where is %1?</source>
            <translation>¿Dónde está %1?</translation>
        </message>
        <message>
            <source>Films (%1);;All files (*)</source>
            <translation>Vídeos (%1);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>Entrenador</translation>
        </message>
        <message>
            <source>Changed: %1 of shot %2. Undo takes it back.</source>
            <translation>Cambiado: %1 del tiro %2. Deshacer lo retira.</translation>
        </message>
        <message>
            <source>shot-%1.png</source>
            <translation>tiro-%1.png</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <translation>Guardar la imagen</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg)</source>
            <translation>Imágenes (*.png *.svg)</translation>
        </message>
        <message>
            <source>The picture is in %1.</source>
            <translation>La imagen está en %1.</translation>
        </message>
        <message>
            <source>A ball cannot be taken away here; correct the result when it fell.</source>
            <translation>Aquí no se puede quitar una bola; corrija el resultado si cayó.</translation>
        </message>
        <message>
            <source>Drag a ball to where it lay before the shot, or choose it with the tab key and move it with the arrow keys. D goes on to where the balls came to rest.</source>
            <translation>Arrastre una bola a donde estaba antes del tiro, o elíjala con el tabulador y muévala con las flechas. D pasa a los lugares después del tiro.</translation>
        </message>
        <message>
            <source>Drag a ball to where it came to rest. D ends.</source>
            <translation>Arrastre una bola a donde quedó en reposo. D termina.</translation>
        </message>
        <message>
            <source>This frame was measured live: nobody kept its film. The plan shows it.</source>
            <translation>Esta partida se midió en directo: nadie guardó su video. El plano la muestra.</translation>
        </message>
        <message>
            <source>No guardian's consent to films that are handed on is noted for: %1.</source>
            <translation>No consta el consentimiento de un tutor para entregar videos de: %1.</translation>
        </message>
        <message>
            <source>No consent to films that are handed on is noted for: %1.</source>
            <translation>No consta el consentimiento para entregar videos de: %1.</translation>
        </message>
        <message>
            <source>Note it in Players, or save the plan as a clip: it shows nobody.</source>
            <translation>Anótelo en Jugadores, o guarde el plano como clip: no muestra a nadie.</translation>
        </message>
        <message numerus="yes">
            <source>The clip is in %1 (%n image(s)).</source>
            <translation>
                <numerusform>El clip está en %1 (%n fotograma).</numerusform>
                <numerusform>El clip está en %1 (%n fotogramas).</numerusform>
            </translation>
        </message>
        <message>
            <source>Film with the ways drawn over it (*.mp4 *.avi)</source>
            <translation>Vídeo con los recorridos dibujados (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Film alone (*.mp4 *.avi)</source>
            <translation>Solo el video (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Plan of the table (*.mp4 *.avi)</source>
            <translation>Plano de la mesa (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Save a clip</source>
            <translation>Guardar un clip</translation>
        </message>
        <message>
            <source>shot-%1.mp4</source>
            <translation>tiro-%1.mp4</translation>
        </message>
        <message>
            <source>Shot %1 is held: choose another one to see both side by side. Q ends it.</source>
            <translation>El tiro %1 está fijado: elija otro para ver los dos lado a lado. Q lo termina.</translation>
        </message>
        <message>
            <source>Taken back: a change of shot %1.</source>
            <translation>Deshecho: un cambio del tiro %1.</translation>
        </message>
        <message numerus="yes">
            <source>Suggestions worked out anew: %n shot(s).</source>
            <translation>
                <numerusform>Sugerencias calculadas de nuevo: %n tiro.</numerusform>
                <numerusform>Sugerencias calculadas de nuevo: %n tiros.</numerusform>
            </translation>
        </message>
        <message>
            <source>Films are played without sound.</source>
            <translation>Los videos se reproducen sin sonido.</translation>
        </message>
        <message>
            <source>Films are played with sound.</source>
            <translation>Los videos se reproducen con sonido.</translation>
        </message>
        <message>
            <source>Suggestions are worked out anew from what was corrected.</source>
            <translation>Las sugerencias se calculan de nuevo según lo corregido.</translation>
        </message>
        <message>
            <source>The clip is written.</source>
            <translation>Se está escribiendo el clip.</translation>
        </message>
        <message>
            <source>Pictures (*.png)</source>
            <translation>Imágenes (*.png)</translation>
        </message>
        <message>
            <source>Measure the demo film</source>
            <translation>Medir el vídeo de demostración</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigChoice</name>
        <message>
            <source>Rig</source>
            <translation>Montaje</translation>
        </message>
        <message>
            <source>Choose a rig file</source>
            <translation>Elegir un archivo de montaje</translation>
        </message>
        <message>
            <source>Rig files (*.json);;All files (*)</source>
            <translation>Montajes (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>rig.json, from Set-up or calibrate rig</source>
            <translation>rig.json, de la configuración o de calibrate rig</translation>
        </message>
        <message>
            <source>Choose a table file</source>
            <translation>Elegir un archivo de mesa</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>Archivos de mesa (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>table.json, or a usual size such as 9ft</source>
            <translation>table.json, o un tamaño usual como 9ft</translation>
        </message>
        <message>
            <source>There is no rig yet. It tells where the camera sits over the table; Set-up makes one from a film or still.</source>
            <translation>Aún no hay montaje. Dice dónde está la cámara sobre la mesa; la configuración lo hace con un video o una foto.</translation>
        </message>
        <message>
            <source>Make one in Set-&amp;up</source>
            <translation>Hacer uno en la &amp;configuración</translation>
        </message>
        <message>
            <source>Other files…</source>
            <translation>Otros archivos…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigPage</name>
        <message>
            <source>&amp;Make the rig</source>
            <translation>&amp;Calcular el montaje</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Marca</translation>
        </message>
        <message>
            <source>Off in the picture</source>
            <translation>Desvío en la imagen</translation>
        </message>
        <message>
            <source>Off on its rail</source>
            <translation>Desvío en el marco</translation>
        </message>
        <message>
            <source>Found by the others</source>
            <translation>Según las demás</translation>
        </message>
        <message>
            <source>How well each tag agrees</source>
            <translation>Cuánto concuerda cada marca</translation>
        </message>
        <message>
            <source>Cushion</source>
            <translation>Banda</translation>
        </message>
        <message>
            <source>Straight to (rms)</source>
            <translation>Rectitud (rms)</translation>
        </message>
        <message>
            <source>At most</source>
            <translation>Máximo</translation>
        </message>
        <message>
            <source>How straight each cushion's nose comes out</source>
            <translation>Rectitud de la nariz de cada banda</translation>
        </message>
        <message>
            <source>no film yet</source>
            <translation>aún sin video</translation>
        </message>
        <message>
            <source>the lens from the cushions</source>
            <translation>la lente a partir de las bandas</translation>
        </message>
        <message>
            <source>no lens yet</source>
            <translation>aún sin lente</translation>
        </message>
        <message>
            <source>From %1, with %2 and the tags on the rails.</source>
            <translation>A partir de: %1, %2 y las marcas del marco.</translation>
        </message>
        <message>
            <source>No rig yet.</source>
            <translation>Aún no hay montaje.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 toward the foot</source>
            <translation>%1 hacia el pie</translation>
        </message>
        <message>
            <source>%1 toward the head</source>
            <translation>%1 hacia la cabecera</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>%1 a la izquierda</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>%1 a la derecha</translation>
        </message>
        <message>
            <source>The camera sits %1 above the cloth, %2 and %3 of the table's middle.</source>
            <translation>La cámara está a %1 sobre el paño y, desde el centro de la mesa, %2 y %3.</translation>
        </message>
        <message>
            <source>The cushions come out bent by up to %1: the lens belongs to another camera, or the film was corrected before. Calibrate the lens of this camera.</source>
            <translation>Las bandas salen curvadas hasta %1: la lente es de otra cámara o el video ya se había corregido. Calibre la lente de esta cámara.</translation>
        </message>
        <message>
            <source>The cushions come out straight but the tags disagree by %1: measure their places and heights again.</source>
            <translation>Las bandas salen rectas, pero las marcas discrepan en %1: mida otra vez sus lugares y alturas.</translation>
        </message>
        <message>
            <source>Camera and cushions agree.</source>
            <translation>La cámara y las bandas concuerdan.</translation>
        </message>
        <message>
            <source>The tags agree to %1 (%2 px).</source>
            <translation>Las marcas concuerdan con un margen de %1 (%2 px).</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>A ball lies within %1 of its place at the middle and within %2 near a corner (95 %).</source>
            <translation>Una bola está a menos de %1 de su lugar en el centro y a menos de %2 cerca de una esquina (95 %).</translation>
        </message>
        <message>
            <source>Four tags and a lens from a board bring this to about 1 mm: some %1 less in the corner.</source>
            <translation>Cuatro marcas y una lente sacada de un tablero lo llevan a cerca de 1 mm: unos %1 menos en la esquina.</translation>
        </message>
        <message>
            <source>From %1, with %2, the cushions and the sights.</source>
            <translation>A partir de: %1, %2, las bandas y las miras.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RunPanel</name>
        <message>
            <source>Tries of this run</source>
            <translation>Intentos de esta serie</translation>
        </message>
        <message>
            <source>Met, missed, or not said; a place put in for the cue ball decides what it can</source>
            <translation>Cumplido, fallado o no dicho; el sitio puesto para la blanca decide lo que puede</translation>
        </message>
        <message>
            <source>Try %1 of %2</source>
            <translation>Intento %1 de %2</translation>
        </message>
        <message>
            <source>set-up %1</source>
            <translation>colocación %1</translation>
        </message>
        <message>
            <source>Met in full: %1</source>
            <translation>Cumplido del todo: %1</translation>
        </message>
        <message>
            <source>Missed thick %1, thin %2</source>
            <translation>Gruesas %1, finas %2</translation>
        </message>
        <message>
            <source>not all known</source>
            <translation>no se sabe todo</translation>
        </message>
        <message>
            <source>met</source>
            <translation>cumplido</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>fallado</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionLight</name>
        <message>
            <source>Project the suggestion</source>
            <translation>Proyectar la sugerencia</translation>
        </message>
        <message>
            <source>Show the suggested shot on the cloth: its line, and where the cue ball is to rest</source>
            <translation>Mostrar en el paño el tiro sugerido: su línea y dónde debe quedar la blanca</translation>
        </message>
        <message>
            <source>Project where balls belong</source>
            <translation>Proyectar el lugar de las bolas</translation>
        </message>
        <message>
            <source>After an interruption: show where balls must be put back</source>
            <translation>Tras una interrupción: mostrar dónde hay que reponer las bolas</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>a ball</comment>
            <translation>no se ve</translation>
        </message>
        <message>
            <source>Every ball lies where it belongs.</source>
            <translation>Cada bola está en su lugar.</translation>
        </message>
        <message>
            <source>To be put back: %1.</source>
            <comment>balls</comment>
            <translation>Por devolver a su lugar: %1.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionPlace</name>
        <message>
            <source>Session</source>
            <translation>Sesión</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) now stand beside what would have been suggested: see Review.</source>
            <translation>
                <numerusform>%n tiro está ahora junto a lo que se habría sugerido: vea Revisión.</numerusform>
                <numerusform>%n tiros están ahora junto a lo que se habría sugerido: vea Revisión.</numerusform>
            </translation>
        </message>
        <message>
            <source>Shots of this frame</source>
            <translation>Tiros de esta partida</translation>
        </message>
        <message>
            <source>Choose the ball that was made and its pocket first.</source>
            <translation>Elija antes la bola embocada y su tronera.</translation>
        </message>
        <message>
            <source>%1, frame %2</source>
            <translation>%1, partida %2</translation>
        </message>
        <message>
            <source>A session is under way: end it before another film is measured.</source>
            <translation>Hay una sesión en curso: termínela antes de medir otro video.</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) stand where the photo shows them. One look is not sure of the names: check them.</source>
            <translation>
                <numerusform>%n bola está donde la muestra la foto. Una sola mirada no está segura de los números: compruébelos.</numerusform>
                <numerusform>%n bolas están donde las muestra la foto. Una sola mirada no está segura de los números: compruébelos.</numerusform>
            </translation>
        </message>
        <message>
            <source>A photo of the table</source>
            <translation>Una foto de la mesa</translation>
        </message>
        <message>
            <source>Pictures (*.jpg *.jpeg *.png);;All files (*)</source>
            <translation>Imágenes (*.jpg *.jpeg *.png);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>A photo needs the rig of the camera that took it: make one in Set-up first.</source>
            <translation>Una foto necesita el montaje de la cámara que la tomó: hágalo primero en Configuración.</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>Buscando las bolas…</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>Entrenador</translation>
        </message>
        <message>
            <source>Put the shot in first; then choose the ball that fell with it, and its pocket.</source>
            <translation>Anote primero el tiro; elija luego la bola que cayó también y su tronera.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetUpSection</name>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>Elija primero una cámara, o el video que la sustituye.</translation>
        </message>
        <message>
            <source>The camera needs its rig to see where balls lie: make one in Set-up first.</source>
            <translation>La cámara necesita su montaje para ver dónde están las bolas: hágalo primero en Configuración.</translation>
        </message>
        <message>
            <source>Stop looking</source>
            <translation>Dejar de mirar</translation>
        </message>
        <message>
            <source>Check the set-up</source>
            <translation>Comprobar la colocación</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>Buscando las bolas…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupDesk</name>
        <message>
            <source>There is no rig yet; make one in the step Rig.</source>
            <translation>Aún no hay montaje; calcule uno en el paso Montaje.</translation>
        </message>
        <message>
            <source>What was kept of a set-up in %1 cannot be read; it begins anew.</source>
            <translation>No se puede leer lo que se conservó de una configuración en %1; se empieza de nuevo.</translation>
        </message>
        <message>
            <source>There are no stills yet; add pictures of the board.</source>
            <translation>Aún no hay fotos; añada imágenes del tablero.</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>Aún no hay video de la mesa; elija uno en el paso Cámara.</translation>
        </message>
        <message>
            <source>There is no lens yet; calibrate it, or set up from the table itself without tags.</source>
            <translation>Aún no hay lente; calíbrela, o configure a partir de la propia mesa, sin marcas.</translation>
        </message>
        <message>
            <source>No rig is in use yet; go through the steps once.</source>
            <translation>Aún no hay ningún montaje en uso; recorra los pasos una vez.</translation>
        </message>
        <message>
            <source>The set-up is saved in %1 and is the one in use.</source>
            <translation>La configuración está guardada en %1 y es la que está en uso.</translation>
        </message>
        <message>
            <source>Something was changed meanwhile, so what came out no longer holds; make it again.</source>
            <translation>Entretanto se cambió algo, así que el resultado ya no vale; hágalo de nuevo.</translation>
        </message>
        <message>
            <source>Work goes on; stop it, or let it end, before a step is undone.</source>
            <translation>Hay trabajo en curso; deténgalo o deje que acabe antes de deshacer un paso.</translation>
        </message>
        <message>
            <source>start a new set-up</source>
            <translation>nueva configuración empezada</translation>
        </message>
        <message>
            <source>the table file</source>
            <translation>archivo de la mesa</translation>
        </message>
        <message>
            <source>the lens file</source>
            <translation>archivo de lente</translation>
        </message>
        <message>
            <source>the set-up in use opened</source>
            <translation>configuración en uso abierta</translation>
        </message>
        <message>
            <source>the film</source>
            <translation>video</translation>
        </message>
        <message>
            <source>stills added</source>
            <translation>fotos añadidas</translation>
        </message>
        <message>
            <source>stills removed</source>
            <translation>fotos quitadas</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>lente</translation>
        </message>
        <message>
            <source>the projector</source>
            <translation>proyector</translation>
        </message>
        <message>
            <source>a still taken</source>
            <translation>una foto tomada</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupPlace</name>
        <message>
            <source>Set-up</source>
            <translation>Configuración</translation>
        </message>
        <message>
            <source>New set-up</source>
            <translation>Nueva configuración</translation>
        </message>
        <message>
            <source>%1 ✓</source>
            <comment>a step that is done</comment>
            <translation>%1 ✓</translation>
        </message>
        <message>
            <source>%1, done</source>
            <comment>a step</comment>
            <translation>%1, hecho</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SheetsView</name>
        <message>
            <source>Preview</source>
            <translation>Vista previa</translation>
        </message>
        <message>
            <source>Sheet %1 of %2</source>
            <translation>Hoja %1 de %2</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotFilter</name>
        <message>
            <source>Missed pots</source>
            <translation>Bolas falladas</translation>
        </message>
        <message>
            <source>Made, but position lost</source>
            <translation>Embocada, pero sin posición</translation>
        </message>
        <message>
            <source>Another shot was better</source>
            <translation>Otro tiro era mejor</translation>
        </message>
        <message>
            <source>Dearest choice of a frame not won</source>
            <translation>Elección más cara de una partida no ganada</translation>
        </message>
        <message>
            <source>Fouls</source>
            <translation>Faltas</translation>
        </message>
        <message>
            <source>Safeties</source>
            <translation>Defensas</translation>
        </message>
        <message>
            <source>Breaks</source>
            <translation>Saques</translation>
        </message>
        <message>
            <source>Player</source>
            <translation>Jugador</translation>
        </message>
        <message>
            <source>Everybody</source>
            <translation>Todos</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>&amp;Jugador</translation>
        </message>
        <message>
            <source>Which shots</source>
            <translation>Qué tiros</translation>
        </message>
        <message>
            <source>All shots</source>
            <translation>Todos los tiros</translation>
        </message>
        <message>
            <source>Sho&amp;ts</source>
            <translation>T&amp;iros</translation>
        </message>
        <message>
            <source>Miss side</source>
            <translation>Lado del fallo</translation>
        </message>
        <message>
            <source>Thick or thin</source>
            <translation>Gruesa o fina</translation>
        </message>
        <message>
            <source>Too thick</source>
            <translation>Demasiado gruesa</translation>
        </message>
        <message>
            <source>Too thin</source>
            <translation>Demasiado fina</translation>
        </message>
        <message>
            <source>Mi&amp;ss side</source>
            <translation>Lado del &amp;fallo</translation>
        </message>
        <message>
            <source>C&amp;ut</source>
            <translation>&amp;Corte</translation>
        </message>
        <message>
            <source>Least cut</source>
            <translation>Corte mínimo</translation>
        </message>
        <message>
            <source>Most cut</source>
            <translation>Corte máximo</translation>
        </message>
        <message>
            <source>Sp&amp;eed</source>
            <translation>&amp;Velocidad</translation>
        </message>
        <message>
            <source> m/s</source>
            <translation> m/s</translation>
        </message>
        <message>
            <source>Least speed</source>
            <translation>Velocidad mínima</translation>
        </message>
        <message>
            <source>Most speed</source>
            <translation>Velocidad máxima</translation>
        </message>
        <message>
            <source>Longest pot</source>
            <translation>Bola más larga</translation>
        </message>
        <message>
            <source>Way of the cue ball times way of the object ball, in diamonds: of straight pots, 2 is short and 12 long</source>
            <translation>Recorrido de la blanca por recorrido de la bola objetivo, en diamantes: en bolas rectas, 2 es corto y 12 es largo</translation>
        </message>
        <message>
            <source>&amp;Longest</source>
            <translation>&amp;Más larga</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>Tronera</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>Todas las troneras</translation>
        </message>
        <message>
            <source>P&amp;ocket</source>
            <translation>&amp;Tronera</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>Modalidad</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>Todas las modalidades</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>M&amp;odalidad</translation>
        </message>
        <message>
            <source>S&amp;ince</source>
            <translation>&amp;Desde</translation>
        </message>
        <message>
            <source>Only since a day</source>
            <translation>Solo desde un día</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Primer día</translation>
        </message>
        <message>
            <source>All sessions</source>
            <translation>Todas las sesiones</translation>
        </message>
        <message>
            <source>Back to all sessions</source>
            <translation>Volver a todas las sesiones</translation>
        </message>
        <message>
            <source>Shots that were asked for</source>
            <translation>Tiros filtrados</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Etiqueta</translation>
        </message>
        <message>
            <source>With or without a tag</source>
            <translation>Con o sin etiqueta</translation>
        </message>
        <message>
            <source>T&amp;ag</source>
            <translation>&amp;Etiqueta</translation>
        </message>
        <message>
            <source>Made, but on the wrong side of the next ball</source>
            <translation>Embocada, pero en el lado equivocado de la bola siguiente</translation>
        </message>
        <message>
            <source>Corrected by a person</source>
            <translation>Corregidos por una persona</translation>
        </message>
        <message>
            <source>Not sure: please check</source>
            <translation>No seguros: compruébelos</translation>
        </message>
        <message>
            <source>Put in by hand, or not followed</source>
            <translation>A mano o sin seguimiento</translation>
        </message>
        <message>
            <source>Side of the cut</source>
            <translation>Lado del corte</translation>
        </message>
        <message>
            <source>Cut to the left or right</source>
            <translation>Corte a ambos lados</translation>
        </message>
        <message>
            <source>Cut to the left</source>
            <translation>Corte a la izquierda</translation>
        </message>
        <message>
            <source>Cut to the right</source>
            <translation>Corte a la derecha</translation>
        </message>
        <message>
            <source>Cut si&amp;de</source>
            <translation>&amp;Lado</translation>
        </message>
        <message>
            <source>Occasion</source>
            <translation>Ocasión</translation>
        </message>
        <message>
            <source>Practice, match or lesson</source>
            <translation>Cualquier ocasión</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Práctica</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>Partido</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>Clase</translation>
        </message>
        <message>
            <source>Occasio&amp;n</source>
            <translation>Ocasió&amp;n</translation>
        </message>
        <message>
            <source>Minutes into the session</source>
            <translation>Minutos desde el inicio de la sesión</translation>
        </message>
        <message>
            <source>From the first shot</source>
            <translation>Desde el primer tiro</translation>
        </message>
        <message>
            <source> min on</source>
            <translation> min</translation>
        </message>
        <message>
            <source>F&amp;rom</source>
            <translation>A p&amp;artir de</translation>
        </message>
        <message>
            <source>Until</source>
            <translation>Hasta</translation>
        </message>
        <message>
            <source>Only until a day</source>
            <translation>Solo hasta un día</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Último día</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Condiciones</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Mesa</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>Todas las mesas</translation>
        </message>
        <message>
            <source>Ta&amp;ble</source>
            <translation>Me&amp;sa</translation>
        </message>
        <message>
            <source>Who else played</source>
            <translation>Quién más jugó</translation>
        </message>
        <message>
            <source>Whoever else played</source>
            <translation>Jugara quien jugara</translation>
        </message>
        <message>
            <source>&amp;With</source>
            <translation>Contra &amp;quién</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln tiro</numerusform>
                <numerusform>%Ln tiros</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotPanel</name>
        <message>
            <source>Details of the shot</source>
            <translation>Detalles del tiro</translation>
        </message>
        <message>
            <source>Where everything rested</source>
            <translation>Dónde se detuvo todo</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>Ruling</source>
            <translation>Decisión</translation>
        </message>
        <message>
            <source>Choose a shot to read what was struck and what happened.</source>
            <translation>Elija un tiro para leer cómo se golpeó y qué pasó.</translation>
        </message>
        <message>
            <source>What was struck</source>
            <translation>Cómo se golpeó</translation>
        </message>
        <message>
            <source>not observable: %1</source>
            <translation>no observable: %1</translation>
        </message>
        <message>
            <source>Only one direction of the offset can be seen: the band holds the tip point.</source>
            <translation>Solo se ve una dirección del desplazamiento: el punto de ataque está en la franja.</translation>
        </message>
        <message>
            <source>Dotted ring: miscue limit.</source>
            <translation>Anillo de puntos: límite de pifia.</translation>
        </message>
        <message>
            <source>± one standard uncertainty. R: ball radius, + right and above.</source>
            <translation>± una incertidumbre estándar. R: radio de la bola, + a la derecha y arriba.</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Qué pasó</translation>
        </message>
        <message>
            <source>First contact: %1</source>
            <translation>Primer contacto: %1</translation>
        </message>
        <message>
            <source>The cue ball met no ball.</source>
            <translation>La blanca no tocó ninguna bola.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Nothing fell.</source>
            <translation>No cayó nada.</translation>
        </message>
        <message>
            <source>Fell: %1</source>
            <translation>Cayó: %1</translation>
        </message>
        <message>
            <source>Events of the shot, seconds after the strike</source>
            <translation>Sucesos del tiro, segundos después del golpe</translation>
        </message>
        <message>
            <source>Why it missed</source>
            <translation>Por qué se falló</translation>
        </message>
        <message>
            <source>Turn of the object ball's line, + to the left seen along the shot.</source>
            <translation>Giro de la línea de la bola objetivo, + a la izquierda visto en el sentido del tiro.</translation>
        </message>
        <message>
            <source>Suggested and taken</source>
            <translation>Sugerido y jugado</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>column</comment>
            <translation>sugerido</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>column</comment>
            <translation>jugado</translation>
        </message>
        <message>
            <source>* Corrected by a person: %1</source>
            <translation>* Corregido por una persona: %1</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>Correcciones</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Retirar</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>Retirar: %1</translation>
        </message>
        <message>
            <source>The cue before the strike</source>
            <translation>El taco antes del golpe</translation>
        </message>
        <message>
            <source>The camera moved by %1 mm while this shot was played: its places are doubtful.</source>
            <translation>La cámara se movió %1 mm durante este tiro: sus posiciones son dudosas.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotTreeModel</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n tiro</numerusform>
                <numerusform>%n tiros</numerusform>
            </translation>
        </message>
        <message>
            <source>Frame %1</source>
            <translation>Partida %1</translation>
        </message>
        <message>
            <source>Still running, or its film was not read to the end.</source>
            <translation>Sigue en curso, o su video no se leyó hasta el final.</translation>
        </message>
        <message>
            <source>–</source>
            <comment>speed not observable</comment>
            <translation>–</translation>
        </message>
        <message>
            <source>Shot %1, %2, %3</source>
            <translation>Tiro %1, %2, %3</translation>
        </message>
        <message>
            <source>Shot</source>
            <translation>Tiro</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Velocidad</translation>
        </message>
        <message>
            <source>corrected by a person</source>
            <translation>corregido por una persona</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StartForm</name>
        <message>
            <source>A session without a camera</source>
            <translation>Una sesión sin cámara</translation>
        </message>
        <message>
            <source>Put the balls down, say what was played and what happened; the referee keeps turn and score.</source>
            <translation>Coloque las bolas, diga qué se jugó y qué pasó; el árbitro lleva el turno y el marcador.</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>No game: practice without a referee</source>
            <translation>Sin modalidad: entrenamiento sin árbitro</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>M&amp;odalidad</translation>
        </message>
        <message>
            <source>One or two names with a comma; who breaks comes first</source>
            <translation>Uno o dos nombres separados por coma; primero quien saca</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>&amp;Jugadores</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>Un tamaño usual, o la ruta de un archivo de mesa</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Mesa</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Entrenamiento</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>Encuentro</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>Clase</translation>
        </message>
        <message>
            <source>&amp;For</source>
            <translation>&amp;Para</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Empezar</translation>
        </message>
        <message>
            <source>Go on with it</source>
            <translation>Continuar</translation>
        </message>
        <message>
            <source>Kept in %1.</source>
            <translation>Se guarda en %1.</translation>
        </message>
        <message>
            <source>The session "%1" was not ended.</source>
            <translation>La sesión «%1» no se terminó.</translation>
        </message>
        <message>
            <source>By hand</source>
            <translation>A mano</translation>
        </message>
        <message>
            <source>From a film</source>
            <translation>De un video</translation>
        </message>
        <message>
            <source>A session from a film</source>
            <translation>Una sesión de un video</translation>
        </message>
        <message>
            <source>Every shot of the film is measured and ruled; you may stop at any time and keep what was measured.</source>
            <translation>Cada tiro del video se mide y se arbitra; puede parar en cualquier momento y conservar lo medido.</translation>
        </message>
        <message>
            <source>Measure the film</source>
            <translation>Medir el video</translation>
        </message>
        <message>
            <source>Choose a film</source>
            <translation>Elegir un video</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>Vídeos (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Drop a film on the window, or choose one</source>
            <translation>Suelte un video en la ventana, o elija uno</translation>
        </message>
        <message>
            <source>Fil&amp;m</source>
            <translation>&amp;Vídeo</translation>
        </message>
        <message>
            <source>&amp;Rig</source>
            <translation>M&amp;ontaje</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>&amp;Verlo en Revisión</translation>
        </message>
        <message>
            <source>Measure it &amp;again</source>
            <translation>Medirlo &amp;otra vez</translation>
        </message>
        <message>
            <source>Choose the film first.</source>
            <translation>Elija primero el video.</translation>
        </message>
        <message>
            <source>Choose the rig of this camera first; Set-up makes one from a film or still of the table.</source>
            <translation>Elija primero el montaje de esta cámara; la configuración lo hace con un video o una foto de la mesa.</translation>
        </message>
        <message>
            <source>Choose the table first: the table.json that was measured, or a usual size such as 9ft.</source>
            <translation>Elija primero la mesa: el table.json medido, o un tamaño usual como 9ft.</translation>
        </message>
        <message>
            <source>Live</source>
            <translation>En directo</translation>
        </message>
        <message>
            <source>A session while it is played</source>
            <translation>Una sesión mientras se juega</translation>
        </message>
        <message>
            <source>A camera looks on: every shot is measured and ruled as soon as the balls rest. Ask those who play before you film them.</source>
            <translation>Una cámara observa: cada tiro se mide y se arbitra en cuanto las bolas se detienen. Pida permiso a quienes juegan antes de filmarlos.</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>&amp;Cámara</translation>
        </message>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>Elija primero una cámara, o el video que la sustituye.</translation>
        </message>
        <message>
            <source>&amp;Keep the film beside the record</source>
            <translation>&amp;Guardar el video junto al registro</translation>
        </message>
        <message>
            <source>Only of people whose consent to being filmed is noted in Players; measured is either way</source>
            <translation>Solo de personas cuyo consentimiento para ser filmadas consta en Jugadores; se mide en cualquier caso</translation>
        </message>
        <message>
            <source>Measure it all the &amp;same</source>
            <translation>Medirlo de &amp;todos modos</translation>
        </message>
        <message>
            <source>Mend &amp;it in Set-up</source>
            <translation>Corr&amp;egir en Configuración</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillCamera</name>
        <message>
            <source>No camera is chosen; connect one, or choose a film that stands in for it.</source>
            <translation>No hay cámara elegida; conecte una, o elija un video en su lugar.</translation>
        </message>
        <message>
            <source>Blurred: the board's edges are %1 px wide. Hold it still, or light it better.</source>
            <translation>Borrosa: los bordes del tablero miden %1 px de ancho. Sosténgalo quieto, o ilumínelo mejor.</translation>
        </message>
        <message>
            <source>The camera's image is mirrored; switch that off in the camera's own settings.</source>
            <translation>La imagen de la cámara está en espejo; desactívelo en los ajustes de la cámara.</translation>
        </message>
        <message>
            <source>This print has the old layout, its first square light; print the board anew.</source>
            <translation>Esta impresión tiene el diseño antiguo, con la primera casilla clara; imprima otra vez el tablero.</translation>
        </message>
        <message>
            <source>The board is not seen; hold it so that most of its squares show.</source>
            <translation>No se ve el tablero; sosténgalo de modo que se vean casi todas sus casillas.</translation>
        </message>
        <message>
            <source>The board is where %1 has it already; move or tilt it.</source>
            <translation>El tablero está donde ya lo tiene %1; muévalo o inclínelo.</translation>
        </message>
        <message>
            <source>The stills so far are %1 × %2 px and this image has %3 × %4 px; a lens belongs to one image size.</source>
            <translation>Las fotos hasta ahora son de %1 × %2 px y esta imagen de %3 × %4 px; una lente corresponde a un solo tamaño de imagen.</translation>
        </message>
        <message>
            <source>Sharp: the board's edges are %1 px wide.</source>
            <translation>Nítida: los bordes del tablero miden %1 px de ancho.</translation>
        </message>
        <message>
            <source>The board is seen; it is too small in the picture to say how sharp it is.</source>
            <translation>Se ve el tablero; es demasiado pequeño en la imagen para juzgar la nitidez.</translation>
        </message>
        <message>
            <source>With it the board was in %1 % of the picture, after %2 %.</source>
            <translation>Con ella el tablero habrá estado en el %1 % de la imagen, antes en el %2 %.</translation>
        </message>
        <message>
            <source>The board was here before; the empty parts of the picture would gain more.</source>
            <translation>El tablero ya estuvo aquí; en las partes vacías de la imagen aportaría más.</translation>
        </message>
        <message>
            <source>The board was changed; start the camera anew, so that it is looked for.</source>
            <translation>Se cambió el tablero; reinicie la cámara para que se busque.</translation>
        </message>
        <message>
            <source>Not taken. %1</source>
            <comment>a sentence that says why</comment>
            <translation>No tomada. %1</translation>
        </message>
        <message>
            <source>Stop the ca&amp;mera</source>
            <translation>Detener la cá&amp;mara</translation>
        </message>
        <message>
            <source>Look through the ca&amp;mera</source>
            <translation>Mirar por la cá&amp;mara</translation>
        </message>
        <message>
            <source>Ta&amp;ke this still</source>
            <translation>Tomar esta &amp;foto</translation>
        </message>
        <message>
            <source>Take stills with a ca&amp;mera…</source>
            <translation>Tomar fotos con una cá&amp;mara…</translation>
        </message>
        <message>
            <source>Let the camera run, hold the board to it, and take a still wherever the picture is still empty.</source>
            <translation>Deje correr la cámara, muéstrele el tablero y tome una foto donde la imagen aún esté vacía.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillView</name>
        <message>
            <source>What the camera sees of the board</source>
            <translation>Lo que la cámara ve del tablero</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SuggestionPanel</name>
        <message>
            <source>For whom a shot is suggested</source>
            <translation>Para quién se sugiere un tiro</translation>
        </message>
        <message>
            <source>for a beginner</source>
            <translation>para un principiante</translation>
        </message>
        <message>
            <source>for a club player</source>
            <translation>para un jugador de club</translation>
        </message>
        <message>
            <source>for an expert</source>
            <translation>para un experto</translation>
        </message>
        <message>
            <source>Suggested shots, best first</source>
            <translation>Tiros sugeridos, el mejor primero</translation>
        </message>
        <message>
            <source>What if the cue ball left at this speed</source>
            <translation>Qué pasaría si la blanca saliera a esta velocidad</translation>
        </message>
        <message>
            <source>What if the tip struck so far right of centre, in ball radii</source>
            <translation>Qué pasaría si la suela golpeara a tanta distancia a la derecha del centro, en radios de bola</translation>
        </message>
        <message>
            <source>What if the tip struck so far above centre, in ball radii</source>
            <translation>Qué pasaría si la suela golpeara a tanta distancia por encima del centro, en radios de bola</translation>
        </message>
        <message>
            <source>What if: speed</source>
            <translation>Hipótesis: velocidad</translation>
        </message>
        <message>
            <source>side</source>
            <translation>lado</translation>
        </message>
        <message>
            <source>height</source>
            <translation>altura</translation>
        </message>
        <message>
            <source>for the player at the table</source>
            <translation>para quien tiene el turno</translation>
        </message>
        <message>
            <source>for %1</source>
            <comment>a player</comment>
            <translation>para %1</translation>
        </message>
        <message>
            <source>Looking for a shot…</source>
            <translation>Buscando un tiro…</translation>
        </message>
        <message>
            <source>With this speed and tip point no aim pots the ball.</source>
            <translation>Con esta velocidad y este punto de ataque ninguna dirección emboca la bola.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TableEditor</name>
        <message>
            <source>Table; tab chooses a ball, the arrow keys move it, page up and down choose its pocket</source>
            <translation>Mesa; el tabulador elige una bola, las flechas la mueven, retroceso y avance de página eligen su tronera</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TablePage</name>
        <message>
            <source>Such as: Hall, table 2</source>
            <translation>Por ejemplo: Sala, mesa 2</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>%1: %2 × %3 mm</source>
            <translation>%1: %2 × %3 mm</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Medida</translation>
        </message>
        <message>
            <source>&amp;Size</source>
            <translation>&amp;Tamaño</translation>
        </message>
        <message>
            <source>Length from nose to nose</source>
            <translation>Largo de nariz a nariz</translation>
        </message>
        <message>
            <source>&amp;Length</source>
            <translation>&amp;Largo</translation>
        </message>
        <message>
            <source>Width from nose to nose</source>
            <translation>Ancho de nariz a nariz</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>Anc&amp;ho</translation>
        </message>
        <message>
            <source>Diagonal A: head right to foot left</source>
            <translation>Diagonal A: de cabecera derecha a pie izquierda</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>sin medir</translation>
        </message>
        <message>
            <source>Diagonal &amp;A</source>
            <translation>Diagonal &amp;A</translation>
        </message>
        <message>
            <source>Diagonal B: head left to foot right</source>
            <translation>Diagonal B: de cabecera izquierda a pie derecha</translation>
        </message>
        <message>
            <source>Diagonal &amp;B</source>
            <translation>Diagonal &amp;B</translation>
        </message>
        <message>
            <source>&amp;Open a table file…</source>
            <translation>Abrir un archivo de &amp;mesa…</translation>
        </message>
        <message>
            <source>Open a table file</source>
            <translation>Abrir un archivo de mesa</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>Archivos de mesa (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Both diagonals, from nose corner to nose corner, tell whether the table is square.</source>
            <translation>Ambas diagonales, de esquina a esquina de las narices, dicen si la mesa está a escuadra.</translation>
        </message>
        <message>
            <source>No table has these lengths and diagonals (%1 mm apart); measure again, every time from nose to nose.</source>
            <translation>Ninguna mesa tiene estos largos y diagonales (%1 mm de diferencia); mida otra vez, siempre de nariz a nariz.</translation>
        </message>
        <message>
            <source>Square, as well as a tape can tell (%1 mm).</source>
            <translation>A escuadra, hasta donde una cinta métrica lo puede decir (%1 mm).</translation>
        </message>
        <message>
            <source>left</source>
            <comment>of the table</comment>
            <translation>izquierda</translation>
        </message>
        <message>
            <source>right</source>
            <comment>of the table</comment>
            <translation>derecha</translation>
        </message>
        <message>
            <source>Out of square: the foot is pushed %1 mm to the %2 against the head. A ball's place is off by up to half of that; have the rails set, or measure from noses that are straight.</source>
            <translation>Fuera de escuadra: el pie está corrido %1 mm a la %2 respecto de la cabecera. El lugar de una bola tiene un error de hasta la mitad de eso; haga ajustar las bandas, o mida desde narices que estén rectas.</translation>
        </message>
        <message>
            <source>the table's name</source>
            <translation>nombre de la mesa</translation>
        </message>
        <message>
            <source>the table's size</source>
            <translation>medidas de la mesa</translation>
        </message>
        <message>
            <source>the diagonals</source>
            <translation>diagonales</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TagsPage</name>
        <message>
            <source>&amp;No tags: take the camera's place from the cushions</source>
            <translation>&amp;Sin marcas: obtener de las bandas el lugar de la cámara</translation>
        </message>
        <message>
            <source>left</source>
            <comment>side of the picture</comment>
            <translation>a la izquierda</translation>
        </message>
        <message>
            <source>right</source>
            <comment>side of the picture</comment>
            <translation>a la derecha</translation>
        </message>
        <message>
            <source>top</source>
            <comment>side of the picture</comment>
            <translation>arriba</translation>
        </message>
        <message>
            <source>bottom</source>
            <comment>side of the picture</comment>
            <translation>abajo</translation>
        </message>
        <message>
            <source>The picture has the table's &amp;head at its</source>
            <translation>En la imagen, la &amp;cabecera está</translation>
        </message>
        <message>
            <source>Side of the tags' black square</source>
            <translation>Lado del cuadrado negro de las marcas</translation>
        </message>
        <message>
            <source>&amp;Black side</source>
            <translation>Lado &amp;negro</translation>
        </message>
        <message>
            <source>Height of the tags above the cloth</source>
            <translation>Altura de las marcas sobre el paño</translation>
        </message>
        <message>
            <source>H&amp;eight above the cloth</source>
            <translation>&amp;Altura sobre el paño</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papel</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Carta</translation>
        </message>
        <message>
            <source>Make the &amp;sheet (PDF)…</source>
            <translation>Hacer la &amp;hoja (PDF)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Impresión</translation>
        </message>
        <message>
            <source>Lay one tag flat near each corner of the rails, face up, where no ball or hand covers them all. Measure the black square's corners 1 to 4 (top left, top right, bottom right, bottom left of the print) from the table's middle, x toward the foot, y to the left as seen from the head, to half a millimetre. Corners 3 and 4 may be left empty.</source>
            <translation>Ponga una marca plana cerca de cada esquina del marco, cara arriba, donde ninguna bola ni mano las tape todas. Mida las esquinas 1 a 4 del cuadrado negro (arriba izquierda, arriba derecha, abajo derecha, abajo izquierda de la impresión) desde el centro de la mesa, el eje x hacia el pie y el eje y hacia la izquierda visto desde la cabecera, con precisión de medio milímetro. Las esquinas 3 y 4 pueden quedar vacías.</translation>
        </message>
        <message>
            <source>The tags' corners in millimetres from the table's middle</source>
            <translation>Las esquinas de las marcas en milímetros desde el centro de la mesa</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Marca</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Altura</translation>
        </message>
        <message>
            <source>x 1</source>
            <translation>x 1</translation>
        </message>
        <message>
            <source>y 1</source>
            <translation>y 1</translation>
        </message>
        <message>
            <source>x 2</source>
            <translation>x 2</translation>
        </message>
        <message>
            <source>y 2</source>
            <translation>y 2</translation>
        </message>
        <message>
            <source>x 3</source>
            <translation>x 3</translation>
        </message>
        <message>
            <source>y 3</source>
            <translation>y 3</translation>
        </message>
        <message>
            <source>x 4</source>
            <translation>x 4</translation>
        </message>
        <message>
            <source>y 4</source>
            <translation>y 4</translation>
        </message>
        <message>
            <source>&amp;Another tag</source>
            <translation>&amp;Otra marca</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Quitar</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>Hacer la hoja</translation>
        </message>
        <message>
            <source>tags.pdf</source>
            <translation>tags.pdf</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The tags are in %1; print it at 100 % and measure its lines.</source>
            <translation>Las marcas están en %1; imprímalas al 100 % y mida sus líneas.</translation>
        </message>
        <message>
            <source>"%1" is no length in millimetres; type a number such as -1117.5.</source>
            <translation>«%1» no es una longitud en milímetros; escriba un número como -1117,5.</translation>
        </message>
        <message>
            <source>The cushions alone leave a ball's place open by several millimetres; four tags bring about one. The step Trust shows it.</source>
            <translation>Las bandas solas dejan el lugar de una bola con varios milímetros de duda; cuatro marcas lo dejan en cerca de uno. El paso Confianza lo muestra.</translation>
        </message>
        <message numerus="yes">
            <source>%n tag(s) measured; at least three are needed, four check each other.</source>
            <translation>
                <numerusform>%n marca medida; hacen falta al menos tres, cuatro se comprueban entre sí.</numerusform>
                <numerusform>%n marcas medidas; hacen falta al menos tres, cuatro se comprueban entre sí.</numerusform>
            </translation>
        </message>
        <message>
            <source>without tags</source>
            <translation>sin marcas</translation>
        </message>
        <message>
            <source>the head's side</source>
            <translation>lado de la cabecera</translation>
        </message>
        <message>
            <source>the tags' side</source>
            <translation>lado de las marcas</translation>
        </message>
        <message>
            <source>the tags' height</source>
            <translation>altura de las marcas</translation>
        </message>
        <message>
            <source>a tag added</source>
            <translation>marca añadida</translation>
        </message>
        <message>
            <source>a tag removed</source>
            <translation>marca quitada</translation>
        </message>
        <message>
            <source>tag %1, as measured</source>
            <translation>marca %1, medida</translation>
        </message>
        <message>
            <source>From its lines alone a table cannot be told from the same one turned end for end, seen in a mirror, or a twentieth larger or smaller: the head's side here, a picture that is not mirrored and the size in the step Table are taken on your word.</source>
            <translation>Solo por sus líneas, una mesa no se distingue de la misma girada de punta a punta, vista en un espejo, o una vigésima parte mayor o menor: el lado de la cabecera aquí, una imagen sin espejo y el tamaño en el paso Mesa se toman bajo su palabra.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TimeLine</name>
        <message>
            <source>Time line of the session</source>
            <translation>Línea de tiempo de la sesión</translation>
        </message>
        <message>
            <source>made above, missed below</source>
            <translation>arriba embocadas, abajo falladas</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TipPointView</name>
        <message>
            <source>Tip point on the cue ball's face</source>
            <translation>Punto de ataque en la cara de la blanca</translation>
        </message>
    </context>
    <context>
        <name>ferrule::UndoRow</name>
        <message>
            <source>Undo: %1 (Ctrl+Z)</source>
            <translation>Deshacer: %1 (Ctrl+Z)</translation>
        </message>
        <message>
            <source>Nothing to undo</source>
            <translation>Nada que deshacer</translation>
        </message>
        <message>
            <source>Redo: %1 (Ctrl+Y)</source>
            <translation>Rehacer: %1 (Ctrl+Y)</translation>
        </message>
        <message>
            <source>Nothing to redo</source>
            <translation>Nada que rehacer</translation>
        </message>
    </context>
    <context>
        <name>ferrule::WorkStrip</name>
        <message>
            <source>Progress</source>
            <translation>Progreso</translation>
        </message>
    </context>
</TS>
