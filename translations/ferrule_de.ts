<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
    <context>
        <name>Actions</name>
        <message>
            <source>&amp;Open a record…</source>
            <translation>Aufzeichnung ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>Open a record of measured sessions</source>
            <translation>Eine Aufzeichnung gemessener Sitzungen öffnen</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Beenden</translation>
        </message>
        <message>
            <source>Close the window</source>
            <translation>Das Fenster schließen</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>&amp;Draufsicht</translation>
        </message>
        <message>
            <source>Show the table from above</source>
            <translation>Den Tisch von oben zeigen</translation>
        </message>
        <message>
            <source>&amp;Film</source>
            <translation>&amp;Film</translation>
        </message>
        <message>
            <source>Show the film with the measured ways</source>
            <translation>Den Film mit den gemessenen Wegen zeigen</translation>
        </message>
        <message>
            <source>&amp;Side by side</source>
            <translation>&amp;Nebeneinander</translation>
        </message>
        <message>
            <source>Show plan and film together</source>
            <translation>Draufsicht und Film zugleich zeigen</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <translation>Ver&amp;größern</translation>
        </message>
        <message>
            <source>Enlarge the picture</source>
            <translation>Das Bild vergrößern</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <translation>Ver&amp;kleinern</translation>
        </message>
        <message>
            <source>Make the picture smaller</source>
            <translation>Das Bild verkleinern</translation>
        </message>
        <message>
            <source>&amp;Whole table</source>
            <translation>Gan&amp;zer Tisch</translation>
        </message>
        <message>
            <source>Fit the whole picture into its space</source>
            <translation>Das ganze Bild einpassen</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>Schma&amp;le Bereichsleiste</translation>
        </message>
        <message>
            <source>Show the places as icons only</source>
            <translation>Die Bereiche nur als Symbole zeigen</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <translation>&amp;Abspielen</translation>
        </message>
        <message>
            <source>Play in real time, or pause</source>
            <translation>In Echtzeit abspielen oder anhalten</translation>
        </message>
        <message>
            <source>Image back</source>
            <translation>Bild zurück</translation>
        </message>
        <message>
            <source>One image back</source>
            <translation>Ein Bild zurück</translation>
        </message>
        <message>
            <source>Image on</source>
            <translation>Bild vor</translation>
        </message>
        <message>
            <source>One image on</source>
            <translation>Ein Bild vor</translation>
        </message>
        <message>
            <source>Event back</source>
            <translation>Ereignis zurück</translation>
        </message>
        <message>
            <source>Back to the last contact, strike or rest</source>
            <translation>Zurück zum letzten Kontakt, Abstoß oder Stillstand</translation>
        </message>
        <message>
            <source>Event on</source>
            <translation>Ereignis vor</translation>
        </message>
        <message>
            <source>On to the next contact or to rest</source>
            <translation>Vor zum nächsten Kontakt oder Stillstand</translation>
        </message>
        <message>
            <source>Shot back</source>
            <translation>Stoß zurück</translation>
        </message>
        <message>
            <source>The shot before</source>
            <translation>Der Stoß davor</translation>
        </message>
        <message>
            <source>Shot on</source>
            <translation>Stoß vor</translation>
        </message>
        <message>
            <source>The next shot</source>
            <translation>Der nächste Stoß</translation>
        </message>
        <message>
            <source>&amp;Metres per second</source>
            <translation>&amp;Meter pro Sekunde</translation>
        </message>
        <message>
            <source>Show speeds in m/s</source>
            <translation>Tempo in m/s zeigen</translation>
        </message>
        <message>
            <source>&amp;Kilometres per hour</source>
            <translation>&amp;Kilometer pro Stunde</translation>
        </message>
        <message>
            <source>Show speeds in km/h</source>
            <translation>Tempo in km/h zeigen</translation>
        </message>
        <message>
            <source>M&amp;iles per hour</source>
            <translation>M&amp;eilen pro Stunde</translation>
        </message>
        <message>
            <source>Show speeds in mph</source>
            <translation>Tempo in mph zeigen</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Wie das &amp;System</translation>
        </message>
        <message>
            <source>Light or dark as the desktop is</source>
            <translation>Hell oder dunkel wie der Schreibtisch</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Hell</translation>
        </message>
        <message>
            <source>Always light</source>
            <translation>Immer hell</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>&amp;Dunkel</translation>
        </message>
        <message>
            <source>Always dark</source>
            <translation>Immer dunkel</translation>
        </message>
        <message>
            <source>&amp;Keys</source>
            <translation>&amp;Tasten</translation>
        </message>
        <message>
            <source>&amp;About Ferrule</source>
            <translation>Ü&amp;ber Ferrule</translation>
        </message>
        <message>
            <source>&amp;Record</source>
            <translation>&amp;Aufzeichnung</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>A&amp;nsicht</translation>
        </message>
        <message>
            <source>&amp;Step</source>
            <translation>&amp;Schritt</translation>
        </message>
        <message>
            <source>S&amp;peed unit</source>
            <translation>&amp;Tempo-Einheit</translation>
        </message>
        <message>
            <source>&amp;Appearance</source>
            <translation>&amp;Darstellung</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>&amp;Hilfe</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Rückgängig</translation>
        </message>
        <message>
            <source>Take back the last change</source>
            <translation>Die letzte Änderung zurücknehmen</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Wiederholen</translation>
        </message>
        <message>
            <source>Make the change again</source>
            <translation>Die Änderung noch einmal machen</translation>
        </message>
        <message>
            <source>&amp;Made</source>
            <translation>&amp;Gelocht</translation>
        </message>
        <message>
            <source>The chosen ball went into its pocket</source>
            <translation>Die gewählte Kugel wurde in ihre Tasche gelocht</translation>
        </message>
        <message>
            <source>Missed thic&amp;k</source>
            <translation>Verfehlt, zu &amp;dick</translation>
        </message>
        <message>
            <source>The chosen ball was hit too full</source>
            <translation>Die gewählte Kugel wurde zu dick getroffen</translation>
        </message>
        <message>
            <source>Missed thi&amp;n</source>
            <translation>Verfehlt, zu dü&amp;nn</translation>
        </message>
        <message>
            <source>The chosen ball was cut too much</source>
            <translation>Die gewählte Kugel wurde zu dünn getroffen</translation>
        </message>
        <message>
            <source>M&amp;issed</source>
            <translation>&amp;Verfehlt</translation>
        </message>
        <message>
            <source>The chosen ball was missed, on either side</source>
            <translation>Die gewählte Kugel ging daneben, auf irgendeiner Seite</translation>
        </message>
        <message>
            <source>&amp;Safety</source>
            <translation>&amp;Sicherheit</translation>
        </message>
        <message>
            <source>A safety was played</source>
            <translation>Es wurde auf Sicherheit gespielt</translation>
        </message>
        <message>
            <source>S&amp;cratch</source>
            <translation>&amp;Weiße gefallen</translation>
        </message>
        <message>
            <source>The cue ball fell or left the table</source>
            <translation>Die Weiße fiel oder verließ den Tisch</translation>
        </message>
        <message>
            <source>&amp;Foul…</source>
            <translation>&amp;Foul…</translation>
        </message>
        <message>
            <source>Another foul, to be chosen</source>
            <translation>Ein anderes Foul, zum Auswählen</translation>
        </message>
        <message>
            <source>&amp;Break</source>
            <translation>&amp;Anstoß</translation>
        </message>
        <message>
            <source>The balls were broken</source>
            <translation>Die Kugeln wurden angestoßen</translation>
        </message>
        <message>
            <source>&amp;Rack the balls</source>
            <translation>Kugeln a&amp;ufbauen</translation>
        </message>
        <message>
            <source>Set all balls up for a break</source>
            <translation>Alle Kugeln für einen Anstoß aufbauen</translation>
        </message>
        <message>
            <source>Ne&amp;xt frame</source>
            <translation>Nä&amp;chstes Spiel</translation>
        </message>
        <message>
            <source>End this frame and begin the next one</source>
            <translation>Dieses Spiel beenden und das nächste beginnen</translation>
        </message>
        <message>
            <source>&amp;End the session</source>
            <translation>Sitzung be&amp;enden</translation>
        </message>
        <message>
            <source>Keep all shots and close the session</source>
            <translation>Alle Stöße behalten und die Sitzung schließen</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>&amp;Bearbeiten</translation>
        </message>
        <message>
            <source>Sess&amp;ion</source>
            <translation>S&amp;itzung</translation>
        </message>
        <message>
            <source>Su&amp;ggest a shot</source>
            <translation>Stoß v&amp;orschlagen</translation>
        </message>
        <message>
            <source>Show what would be suggested here, or hide it</source>
            <translation>Zeigen, was hier vorgeschlagen würde, oder es verbergen</translation>
        </message>
        <message>
            <source>&amp;Shots behind it</source>
            <translation>&amp;Stöße dahinter</translation>
        </message>
        <message>
            <source>Look at the shots behind the chosen part of a chart</source>
            <translation>Die Stöße hinter dem gewählten Teil eines Bildes ansehen</translation>
        </message>
        <message>
            <source>&amp;Export the chart…</source>
            <translation>Bild &amp;ausgeben…</translation>
        </message>
        <message>
            <source>Write the chosen chart as SVG, PNG or CSV</source>
            <translation>Das gewählte Bild als SVG, PNG oder CSV schreiben</translation>
        </message>
        <message>
            <source>Fi&amp;gures</source>
            <translation>&amp;Diagramme</translation>
        </message>
        <message>
            <source>&amp;Filter the shots</source>
            <translation>Stöße &amp;filtern</translation>
        </message>
        <message>
            <source>List the shots that meet conditions, or go back to all sessions</source>
            <translation>Stöße auflisten, die Bedingungen erfüllen, oder zurück zu allen Sitzungen</translation>
        </message>
        <message>
            <source>Play the &amp;list</source>
            <translation>&amp;Liste spielen</translation>
        </message>
        <message>
            <source>Play the listed shots one after another, or stop</source>
            <translation>Die Stöße der Liste nacheinander spielen, oder anhalten</translation>
        </message>
        <message>
            <source>Export the &amp;report…</source>
            <translation>Be&amp;richt ausgeben…</translation>
        </message>
        <message>
            <source>Write the report as PDF or HTML, or its numbers as CSV</source>
            <translation>Den Bericht als PDF oder HTML schreiben, oder seine Zahlen als CSV</translation>
        </message>
        <message>
            <source>Step &amp;back</source>
            <translation>Schritt &amp;zurück</translation>
        </message>
        <message>
            <source>The step of the set-up before</source>
            <translation>Der vorige Schritt der Einrichtung</translation>
        </message>
        <message>
            <source>Step &amp;on</source>
            <translation>Schritt &amp;weiter</translation>
        </message>
        <message>
            <source>The next step of the set-up</source>
            <translation>Der nächste Schritt der Einrichtung</translation>
        </message>
        <message>
            <source>&amp;Check the rig again…</source>
            <translation>Kamerastandort erneut &amp;prüfen…</translation>
        </message>
        <message>
            <source>Ask a film whether the rig in use still fits</source>
            <translation>An einem Film prüfen, ob der benutzte Kamerastandort noch passt</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Anhalten</translation>
        </message>
        <message>
            <source>Stop the long work that is going on</source>
            <translation>Die laufende lange Arbeit anhalten</translation>
        </message>
        <message>
            <source>Set-&amp;up</source>
            <translation>&amp;Einrichtung</translation>
        </message>
        <message>
            <source>The desktop's language, where the program speaks it</source>
            <translation>Die Sprache des Schreibtischs, wo das Programm sie spricht</translation>
        </message>
        <message>
            <source>Show every word in this language</source>
            <translation>Alle Wörter in dieser Sprache zeigen</translation>
        </message>
        <message>
            <source>&amp;How this place is used</source>
            <translation>&amp;So wird dieser Bereich benutzt</translation>
        </message>
        <message>
            <source>What the place is for, and the steps in their order</source>
            <translation>Wozu der Bereich da ist, und die Schritte der Reihe nach</translation>
        </message>
        <message>
            <source>Every action of the window and its keys</source>
            <translation>Alle Befehle des Fensters und ihre Tasten</translation>
        </message>
        <message>
            <source>Version, cautions and licences</source>
            <translation>Version, Vorsicht und Lizenzen</translation>
        </message>
        <message>
            <source>&amp;Language</source>
            <translation>&amp;Sprache</translation>
        </message>
        <message>
            <source>Balls from a &amp;photo…</source>
            <translation>Kugeln aus einem Fo&amp;to…</translation>
        </message>
        <message>
            <source>Put the balls where a photo of the table's camera shows them</source>
            <translation>Die Kugeln dorthin legen, wo ein Foto der Tischkamera sie zeigt</translation>
        </message>
        <message>
            <source>&amp;Correct the shot…</source>
            <translation>Stoß &amp;berichtigen…</translation>
        </message>
        <message>
            <source>Put right what was read wrongly of the shot in Review</source>
            <translation>Richtigstellen, was im Rückblick am Stoß falsch gelesen wurde</translation>
        </message>
        <message>
            <source>Correct &amp;ball and pocket…</source>
            <translation>&amp;Kugel und Tasche berichtigen…</translation>
        </message>
        <message>
            <source>Say which ball was meant for which pocket</source>
            <translation>Sagen, welche Kugel für welche Tasche gedacht war</translation>
        </message>
        <message>
            <source>Correct who &amp;played…</source>
            <translation>&amp;Spieler berichtigen…</translation>
        </message>
        <message>
            <source>Say who played the shot</source>
            <translation>Sagen, wer den Stoß gespielt hat</translation>
        </message>
        <message>
            <source>Correct the ru&amp;ling…</source>
            <translation>&amp;Entscheidung berichtigen…</translation>
        </message>
        <message>
            <source>Replace what the referee made of the shot</source>
            <translation>Ersetzen, was der Schiedsrichter zum Stoß entschieden hat</translation>
        </message>
        <message>
            <source>&amp;Swap the names of two balls…</source>
            <translation>&amp;Namen zweier Kugeln tauschen…</translation>
        </message>
        <message>
            <source>Say that two balls were taken for each other</source>
            <translation>Sagen, dass zwei Kugeln verwechselt wurden</translation>
        </message>
        <message>
            <source>&amp;Move balls</source>
            <translation>Kugeln &amp;verschieben</translation>
        </message>
        <message>
            <source>Move balls to where they lay before the shot, then after it</source>
            <translation>Kugeln dorthin schieben, wo sie vor dem Stoß lagen, dann danach</translation>
        </message>
        <message>
            <source>Write a no&amp;te</source>
            <translation>No&amp;tiz schreiben</translation>
        </message>
        <message>
            <source>Write a note on the shot in Review</source>
            <translation>Eine Notiz zum Stoß im Rückblick schreiben</translation>
        </message>
        <message>
            <source>Give a ta&amp;g</source>
            <translation>Stichwort &amp;geben</translation>
        </message>
        <message>
            <source>Give the shot in Review a tag, by which it can be found</source>
            <translation>Dem Stoß im Rückblick ein Stichwort geben, unter dem er zu finden ist</translation>
        </message>
        <message>
            <source>S&amp;ave the picture…</source>
            <translation>Bild &amp;speichern…</translation>
        </message>
        <message>
            <source>&amp;Add a player</source>
            <translation>&amp;Spieler hinzufügen</translation>
        </message>
        <message>
            <source>Add a player to the record</source>
            <translation>Einen Spieler in die Aufzeichnung aufnehmen</translation>
        </message>
        <message>
            <source>Add a &amp;guest</source>
            <translation>&amp;Gast hinzufügen</translation>
        </message>
        <message>
            <source>Add somebody whose shots are given to a player later, or erased</source>
            <translation>Jemanden hinzufügen, dessen Stöße später einem Spieler gegeben oder gelöscht werden</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>S&amp;pieler</translation>
        </message>
        <message>
            <source>&amp;Export the player…</source>
            <translation>Spieler &amp;exportieren…</translation>
        </message>
        <message>
            <source>Write all that is kept of the chosen player into a folder</source>
            <translation>Alles, was vom gewählten Spieler behalten wird, in einen Ordner schreiben</translation>
        </message>
        <message>
            <source>&amp;Take in another record…</source>
            <translation>Weitere Aufzeichnung auf&amp;nehmen…</translation>
        </message>
        <message>
            <source>Add what a record of another computer holds, without doubles</source>
            <translation>Hinzufügen, was eine Aufzeichnung eines anderen Rechners enthält, ohne Dopplungen</translation>
        </message>
        <message>
            <source>Answer &amp;1</source>
            <translation>Antwort &amp;1</translation>
        </message>
        <message>
            <source>Give the answer of this number to what the referee asks</source>
            <translation>Die Antwort dieser Nummer auf die Frage des Schiedsrichters geben</translation>
        </message>
        <message>
            <source>Answer &amp;2</source>
            <translation>Antwort &amp;2</translation>
        </message>
        <message>
            <source>Answer &amp;3</source>
            <translation>Antwort &amp;3</translation>
        </message>
        <message>
            <source>Answer &amp;4</source>
            <translation>Antwort &amp;4</translation>
        </message>
        <message>
            <source>Answer &amp;5</source>
            <translation>Antwort &amp;5</translation>
        </message>
        <message>
            <source>Answer &amp;6</source>
            <translation>Antwort &amp;6</translation>
        </message>
        <message>
            <source>Answer &amp;7</source>
            <translation>Antwort &amp;7</translation>
        </message>
        <message>
            <source>Answer &amp;8</source>
            <translation>Antwort &amp;8</translation>
        </message>
        <message>
            <source>Answer &amp;later</source>
            <translation>Später a&amp;ntworten</translation>
        </message>
        <message>
            <source>Put the question off; Review keeps the shot marked</source>
            <translation>Die Frage aufschieben; im Rückblick bleibt der Stoß gekennzeichnet</translation>
        </message>
        <message>
            <source>&amp;What the referee asks</source>
            <translation>Was der Sc&amp;hiedsrichter fragt</translation>
        </message>
        <message>
            <source>Split or &amp;join shots…</source>
            <translation>Stöße teilen oder &amp;zusammenlegen…</translation>
        </message>
        <message>
            <source>Say where a shot ends: another one began in it, or the next belongs to it</source>
            <translation>Sagen, wo ein Stoß endet: ein weiterer begann in ihm, oder der nächste gehört dazu</translation>
        </message>
        <message>
            <source>Balls put do&amp;wn…</source>
            <translation>&amp;Hingelegte Kugeln…</translation>
        </message>
        <message>
            <source>Put right which balls were put down before the shot</source>
            <translation>Berichtigen, welche Kugeln vor dem Stoß hingelegt wurden</translation>
        </message>
        <message>
            <source>Write the picture that Review shows as PNG, or the plan as SVG</source>
            <translation>Das Bild, das der Rückblick zeigt, als PNG schreiben, die Draufsicht auch als SVG</translation>
        </message>
        <message>
            <source>Save a &amp;clip…</source>
            <translation>&amp;Clip speichern…</translation>
        </message>
        <message>
            <source>Write the shot in Review as a short film</source>
            <translation>Den Stoß im Rückblick als kurzen Film schreiben</translation>
        </message>
        <message>
            <source>&amp;Compare shots</source>
            <translation>Stöße &amp;vergleichen</translation>
        </message>
        <message>
            <source>Hold this shot and set others beside it, or end that</source>
            <translation>Diesen Stoß festhalten und andere danebenstellen, oder damit aufhören</translation>
        </message>
        <message>
            <source>Play with &amp;sound</source>
            <translation>Mit &amp;Ton abspielen</translation>
        </message>
        <message>
            <source>Let the film be heard while it plays, or not</source>
            <translation>Den Film beim Abspielen hören lassen oder nicht</translation>
        </message>
        <message>
            <source>Fell &amp;too</source>
            <translation>F&amp;iel auch</translation>
        </message>
        <message>
            <source>The chosen ball fell in its pocket with the last shot, as on a break; dragging it into a pocket says the same</source>
            <translation>Die gewählte Kugel fiel beim letzten Stoß auch in ihre Tasche, etwa beim Anstoß; sie in eine Tasche zu ziehen sagt dasselbe</translation>
        </message>
    </context>
    <context>
        <name>AnswerWords</name>
        <message>
            <source>Yes</source>
            <translation>Ja</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nein</translation>
        </message>
        <message>
            <source>It left the table</source>
            <translation>Sie verließ den Tisch</translation>
        </message>
        <message>
            <source>It lies on the table</source>
            <translation>Sie liegt auf dem Tisch</translation>
        </message>
        <message>
            <source>It fell: %1</source>
            <comment>a pocket</comment>
            <translation>Gefallen: %1</translation>
        </message>
        <message>
            <source>A safety was called</source>
            <translation>Eine Sicherheit war angesagt</translation>
        </message>
        <message>
            <source>%1 has %2</source>
            <comment>a player, solids or stripes</comment>
            <translation>%1 hat %2</translation>
        </message>
        <message>
            <source>%1 or more</source>
            <comment>balls</comment>
            <translation>%1 oder mehr</translation>
        </message>
        <message>
            <source>Leave it as it is ruled</source>
            <translation>So lassen, wie entschieden ist</translation>
        </message>
    </context>
    <context>
        <name>AskedSentence</name>
        <message>
            <source>Aim</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Seiteneffet</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Queueneigung</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the left of what was asked</source>
            <translation>die Weiße läuft %1 weiter links als verlangt</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the right of what was asked</source>
            <translation>die Weiße läuft %1 weiter rechts als verlangt</translation>
        </message>
        <message>
            <source>shots come out %1 too fast</source>
            <translation>Stöße kommen %1 zu schnell</translation>
        </message>
        <message>
            <source>shots come out %1 too slow</source>
            <translation>Stöße kommen %1 zu langsam</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far right</source>
            <translation>das Leder trifft %1 zu weit rechts</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far left</source>
            <translation>das Leder trifft %1 zu weit links</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too high</source>
            <translation>das Leder trifft %1 zu hoch</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too low</source>
            <translation>das Leder trifft %1 zu tief</translation>
        </message>
        <message>
            <source>the cue is %1 too steep</source>
            <translation>das Queue steht %1 zu steil</translation>
        </message>
        <message>
            <source>the cue is %1 too flat</source>
            <translation>das Queue liegt %1 zu flach</translation>
        </message>
        <message>
            <source>the harder the shot, the more falls short: %1 of what is asked</source>
            <translation>je fester der Stoß, desto mehr fehlt: %1 des Verlangten</translation>
        </message>
        <message>
            <source>the harder the shot, the more it overshoots: %1 of what is asked</source>
            <translation>je fester der Stoß, desto mehr ist es zu viel: %1 des Verlangten</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too small</source>
            <translation>Richtungsänderungen kommen %1 zu klein</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too large</source>
            <translation>Richtungsänderungen kommen %1 zu groß</translation>
        </message>
        <message>
            <source>the more is asked, the more is missing: %1 of it</source>
            <translation>je mehr verlangt ist, desto mehr fehlt: %1 davon</translation>
        </message>
        <message>
            <source>the more is asked, the more is too much: %1 of it</source>
            <translation>je mehr verlangt ist, desto mehr ist es zu viel: %1 davon</translation>
        </message>
        <message>
            <source>long shots fall %1 short</source>
            <translation>lange Stöße bleiben %1 zu kurz</translation>
        </message>
        <message>
            <source>long shots go %1 too far</source>
            <translation>lange Stöße geraten %1 zu lang</translation>
        </message>
        <message>
            <source>clipped at %1: more was asked and did not arrive</source>
            <translation>bei %1 abgeschnitten: mehr war verlangt und kam nicht an</translation>
        </message>
        <message>
            <source>comes as asked, to within %1</source>
            <translation>kommt wie verlangt, auf %1 genau</translation>
        </message>
        <message>
            <source>single shots scatter by %1</source>
            <translation>einzelne Stöße streuen um %1</translation>
        </message>
        <message>
            <source>single shots scatter by less than the film can tell</source>
            <translation>einzelne Stöße streuen weniger, als der Film erkennen lässt</translation>
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
            <translation>%1 × %2, %3 Bilder je Sekunde</translation>
        </message>
    </context>
    <context>
        <name>ChartWords</name>
        <message>
            <source>%1 m</source>
            <translation>%1 m</translation>
        </message>
        <message>
            <source>a change beyond luck</source>
            <translation>eine Änderung jenseits des Zufalls</translation>
        </message>
        <message>
            <source>no change beyond luck</source>
            <translation>keine Änderung jenseits des Zufalls</translation>
        </message>
        <message>
            <source>cut across, distance down</source>
            <translation>Schnitt quer, Weg nach unten</translation>
        </message>
        <message>
            <source>only %1</source>
            <translation>nur %1</translation>
        </message>
        <message>
            <source>Made, 95 % interval and number tried. Fewer than %1: not enough to say.</source>
            <translation>Gelocht, 95-%-Bereich und Anzahl der Versuche. Weniger als %1: zu wenig für eine Aussage.</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>Gelocht nach Tasche</translation>
        </message>
        <message>
            <source>Made and number tried; lines: 95 % interval.</source>
            <translation>Gelocht und Anzahl der Versuche; Striche: 95-%-Bereich.</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>Auf welcher Seite die Fehlstöße liegen</translation>
        </message>
        <message>
            <source>too thick</source>
            <translation>zu dick</translation>
        </message>
        <message>
            <source>too thin</source>
            <translation>zu dünn</translation>
        </message>
        <message>
            <source>%1 thick</source>
            <translation>%1 zu dick</translation>
        </message>
        <message>
            <source>not enough</source>
            <translation>zu wenig</translation>
        </message>
        <message>
            <source>cuts to the left</source>
            <translation>Schnitte nach links</translation>
        </message>
        <message>
            <source>cuts to the right</source>
            <translation>Schnitte nach rechts</translation>
        </message>
        <message>
            <source>Missed cuts only. Right: 95 % interval of the share that was too thick.</source>
            <translation>Nur verfehlte Schnitte. Rechts: 95-%-Bereich des Anteils, der zu dick war.</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>Gleich schwere Stöße unter anderen Umständen</translation>
        </message>
        <message>
            <source>first 40 minutes</source>
            <translation>erste 40 Minuten</translation>
        </message>
        <message>
            <source>after 40 minutes</source>
            <translation>nach 40 Minuten</translation>
        </message>
        <message>
            <source>in practice</source>
            <translation>im Training</translation>
        </message>
        <message>
            <source>in matches</source>
            <translation>im Wettkampf</translation>
        </message>
        <message>
            <source>Made, equally hard shots; lines: 95 % interval of the difference.</source>
            <translation>Gelocht, gleich schwere Stöße; Striche: 95-%-Bereich des Unterschieds.</translation>
        </message>
        <message>
            <source>%1: %2 (%3 to %4), %5</source>
            <translation>%1: %2 (%3 bis %4), %5</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session. Hollow: matches.</source>
            <translation>Striche und Band: 95-%-Intervall. Zahlen: Stöße der Sitzung. Hohl: Wettkämpfe.</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session.</source>
            <translation>Striche und Band: 95-%-Intervall. Zahlen: Stöße der Sitzung.</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>a band of speed and its unit</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>Gelocht nach dem Weg in die Tasche</translation>
        </message>
        <message>
            <source>over %1°</source>
            <translation>über %1°</translation>
        </message>
        <message>
            <source>%1 to %2°</source>
            <translation>%1 bis %2°</translation>
        </message>
        <message>
            <source>corner, %1</source>
            <comment>a pocket, angles</comment>
            <translation>Ecke, %1</translation>
        </message>
        <message>
            <source>side, %1</source>
            <comment>a pocket, angles</comment>
            <translation>Mitte, %1</translation>
        </message>
    </context>
    <context>
        <name>CheckSentence</name>
        <message>
            <source>%1 fits %2 and %3.</source>
            <translation>%1 passt zu %2 und %3.</translation>
        </message>
        <message>
            <source>The camera has moved by %1 mm and turned by %2 degrees since %3 was made; make the rig again from %4.</source>
            <translation>Die Kamera hat sich seit %3 um %1 mm verschoben und um %2 Grad gedreht; bestimmen Sie den Kamerastandort aus %4 neu.</translation>
        </message>
        <message>
            <source>The lens in %1 belongs to another camera or another zoom than %2; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>Das Objektiv in %1 gehört zu einer anderen Kamera oder einem anderen Zoom als %2; kalibrieren Sie das Objektiv dieser Kamera und bestimmen Sie den Kamerastandort damit neu.</translation>
        </message>
        <message>
            <source>%1 was straightened before, and the lens in %2 straightens it a second time; switch off the lens correction of the camera or the editor and film again.</source>
            <translation>%1 wurde schon entzerrt, und das Objektiv in %2 entzerrt es ein zweites Mal; schalten Sie die Objektivkorrektur von Kamera oder Schnittprogramm aus und filmen Sie neu.</translation>
        </message>
        <message>
            <source>%1 is bent by its lens and %2 does not straighten it; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>%1 ist vom Objektiv verzeichnet und %2 entzerrt es nicht; kalibrieren Sie das Objektiv dieser Kamera und bestimmen Sie den Kamerastandort damit neu.</translation>
        </message>
        <message>
            <source>The picture of %1 is %2 times the size that the lens in %3 was made for; film at the size, zoom and crop of the calibration, or calibrate again at this one and make the rig again.</source>
            <translation>Das Bild von %1 ist %2-mal so groß wie das, für das das Objektiv in %3 bestimmt wurde; filmen Sie mit Größe, Zoom und Ausschnitt der Kalibrierung oder kalibrieren Sie bei diesen neu und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>The tags lie %1 mm higher than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>Die Marken liegen %1 mm höher, als %2 sagt; messen Sie ihre Höhe über dem Tuch, berichtigen Sie die Datei und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>The tags lie %1 mm lower than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>Die Marken liegen %1 mm tiefer, als %2 sagt; messen Sie ihre Höhe über dem Tuch, berichtigen Sie die Datei und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>Tag %1 lies %2 mm from where %3 has it; measure its corners, correct the file and make the rig again.</source>
            <translation>Marke %1 liegt %2 mm neben dem Platz, den %3 nennt; messen Sie ihre Ecken, berichtigen Sie die Datei und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>The tags %1 lie in each other's place; swap them, or correct %2, and make the rig again.</source>
            <translation>Die Marken %1 sind vertauscht; tauschen Sie sie oder berichtigen Sie %2 und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>Tag %1 is turned by %2 degrees from what %3 says; turn it, or correct the file, and make the rig again.</source>
            <translation>Marke %1 ist um %2 Grad anders gedreht, als %3 sagt; drehen Sie sie oder berichtigen Sie die Datei und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>The table is %1 mm longer and %2 mm wider than %3 says (less than 0: shorter, narrower); measure it nose to nose, correct the file and make the rig again.</source>
            <translation>Der Tisch ist %1 mm länger und %2 mm breiter, als %3 sagt (unter 0: kürzer, schmaler); messen Sie ihn von Bandennase zu Bandennase, berichtigen Sie die Datei und bestimmen Sie den Kamerastandort neu.</translation>
        </message>
        <message>
            <source>%1 does not fit %2 and %3, and no single fault explains it; measure the tags again, make the rig again from this film, and check again.</source>
            <translation>%1 passt nicht zu %2 und %3, und kein einzelner Fehler erklärt es; messen Sie die Marken neu, bestimmen Sie den Kamerastandort aus diesem Film und prüfen Sie noch einmal.</translation>
        </message>
        <message>
            <source>%1: not seen</source>
            <translation>%1: nicht gesehen</translation>
        </message>
        <message>
            <source>%1: %2 mm (sound up to %3 mm)</source>
            <translation>%1: %2 mm (in Ordnung bis %3 mm)</translation>
        </message>
        <message>
            <source>%1 - too much</source>
            <translation>%1 – zu viel</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <comment>two cushions</comment>
            <translation>%1 und %2</translation>
        </message>
        <message>
            <source>Tag %1: from its place</source>
            <translation>Marke %1: neben ihrem Platz</translation>
        </message>
        <message>
            <source>%1: nose from a straight line</source>
            <comment>a cushion</comment>
            <translation>%1: Nase neben einer Geraden</translation>
        </message>
        <message>
            <source>%1: nose from its place (+ inward)</source>
            <comment>a cushion</comment>
            <translation>%1: Nase neben ihrem Platz (+ einwärts)</translation>
        </message>
        <message>
            <source>%1: from parallel</source>
            <comment>two cushions</comment>
            <translation>%1: neben der Parallelen</translation>
        </message>
        <message>
            <source>Length nose to nose, seen minus measured</source>
            <translation>Länge von Nase zu Nase, gesehen minus gemessen</translation>
        </message>
        <message>
            <source>Width nose to nose, seen minus measured</source>
            <translation>Breite von Nase zu Nase, gesehen minus gemessen</translation>
        </message>
        <message>
            <source>Diameters of the balls, largest minus smallest</source>
            <translation>Durchmesser der Kugeln, größter minus kleinster</translation>
        </message>
        <message>
            <source>Deepest ball inside a cushion or another ball</source>
            <translation>Am tiefsten in Bande oder anderer Kugel liegende Kugel</translation>
        </message>
    </context>
    <context>
        <name>CorrectionMenu</name>
        <message>
            <source>is %1, and the other way round</source>
            <translation>ist %1, und umgekehrt</translation>
        </message>
        <message>
            <source>to %1</source>
            <translation>nach %1</translation>
        </message>
        <message>
            <source>No pot was tried</source>
            <translation>Keine Kugel wurde auf eine Tasche gespielt</translation>
        </message>
        <message>
            <source>Nobody knows</source>
            <translation>Niemand weiß es</translation>
        </message>
        <message>
            <source>It was a foul</source>
            <translation>Es war ein Foul</translation>
        </message>
        <message>
            <source>It was no foul</source>
            <translation>Es war kein Foul</translation>
        </message>
        <message>
            <source>%1 is at the table next</source>
            <translation>%1 ist als Nächstes am Tisch</translation>
        </message>
        <message>
            <source>The cue ball stays as it lies</source>
            <translation>Die Weiße bleibt liegen</translation>
        </message>
        <message>
            <source>%1 wins the frame</source>
            <translation>%1 gewinnt das Spiel</translation>
        </message>
        <message>
            <source>The frame goes on</source>
            <translation>Das Spiel geht weiter</translation>
        </message>
        <message>
            <source>As the referee ruled</source>
            <translation>Wie der Schiedsrichter entschied</translation>
        </message>
        <message>
            <source>In the whole shot</source>
            <translation>Im ganzen Stoß</translation>
        </message>
        <message>
            <source>From this image on</source>
            <translation>Von diesem Bild an</translation>
        </message>
        <message>
            <source>&amp;Result</source>
            <translation>E&amp;rgebnis</translation>
        </message>
        <message>
            <source>&amp;Ball and pocket</source>
            <translation>&amp;Kugel und Tasche</translation>
        </message>
        <message>
            <source>Ball that was met &amp;first</source>
            <translation>&amp;Zuerst getroffene Kugel</translation>
        </message>
        <message>
            <source>Who &amp;played</source>
            <translation>Wer gespielt &amp;hat</translation>
        </message>
        <message>
            <source>R&amp;uling</source>
            <translation>&amp;Entscheidung</translation>
        </message>
        <message>
            <source>&amp;Names of two balls</source>
            <translation>&amp;Namen zweier Kugeln</translation>
        </message>
        <message>
            <source>Struck in this image</source>
            <translation>In diesem Bild gestoßen</translation>
        </message>
        <message>
            <source>At rest from this image on</source>
            <translation>Von diesem Bild an in Ruhe</translation>
        </message>
        <message>
            <source>&amp;Strike and rest</source>
            <translation>&amp;Stoß und Ruhe</translation>
        </message>
        <message>
            <source>Another shot was struck in this image</source>
            <translation>In diesem Bild wurde ein weiterer Stoß gespielt</translation>
        </message>
        <message>
            <source>The next shot belongs to this one</source>
            <translation>Der nächste Stoß gehört zu diesem</translation>
        </message>
        <message>
            <source>%1, put down at %2</source>
            <translation>%1, hingelegt bei %2</translation>
        </message>
        <message>
            <source>Nobody put it down</source>
            <translation>Niemand hat sie hingelegt</translation>
        </message>
        <message>
            <source>It was another ball</source>
            <translation>Es war eine andere Kugel</translation>
        </message>
        <message>
            <source>A ball was put down that is not listed</source>
            <translation>Es wurde eine Kugel hingelegt, die hier fehlt</translation>
        </message>
        <message>
            <source>&amp;Where the shot ends</source>
            <translation>&amp;Wo der Stoß endet</translation>
        </message>
        <message>
            <source>Balls put &amp;down before it</source>
            <translation>&amp;Davor hingelegte Kugeln</translation>
        </message>
    </context>
    <context>
        <name>CorrectionWords</name>
        <message>
            <source>player</source>
            <translation>Spieler</translation>
        </message>
        <message>
            <source>result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>first contact</source>
            <translation>erster Kontakt</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>Scratch</translation>
        </message>
        <message>
            <source>ball</source>
            <translation>Kugel</translation>
        </message>
        <message>
            <source>pocket</source>
            <translation>Tasche</translation>
        </message>
        <message>
            <source>ruling</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>Lesung</translation>
        </message>
        <message>
            <source>names of two balls</source>
            <translation>Namen zweier Kugeln</translation>
        </message>
        <message>
            <source>a ball's place before the shot</source>
            <translation>Platz einer Kugel vor dem Stoß</translation>
        </message>
        <message>
            <source>a ball's place after the shot</source>
            <translation>Platz einer Kugel nach dem Stoß</translation>
        </message>
        <message>
            <source>strike and rest</source>
            <translation>Stoß und Ruhe</translation>
        </message>
        <message>
            <source>unknown</source>
            <translation>unbekannt</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other</source>
            <translation>%1 und %2 wurden verwechselt</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other from %3 on</source>
            <translation>%1 und %2 wurden ab %3 verwechselt</translation>
        </message>
        <message>
            <source>%1 put on the table before the shot</source>
            <translation>%1 vor dem Stoß auf den Tisch gelegt</translation>
        </message>
        <message>
            <source>%1 put on the table after the shot</source>
            <translation>%1 nach dem Stoß auf den Tisch gelegt</translation>
        </message>
        <message>
            <source>%1 moved by %2 before the shot</source>
            <translation>%1 vor dem Stoß um %2 verschoben</translation>
        </message>
        <message>
            <source>%1 moved by %2 after the shot</source>
            <translation>%1 nach dem Stoß um %2 verschoben</translation>
        </message>
        <message>
            <source>Strike and rest: measured %1 and %2, corrected to %3 and %4</source>
            <translation>Stoß und Ruhe: gemessen %1 und %2, berichtigt auf %3 und %4</translation>
        </message>
        <message>
            <source>Ruling: replaced by a person's</source>
            <translation>Entscheidung: von einer Person ersetzt</translation>
        </message>
        <message>
            <source>%1: %2, confirmed</source>
            <translation>%1: %2, bestätigt</translation>
        </message>
        <message>
            <source>%1: measured %2, corrected to %3</source>
            <translation>%1: gemessen %2, berichtigt auf %3</translation>
        </message>
        <message>
            <source>ball and pocket</source>
            <translation>Kugel und Tasche</translation>
        </message>
        <message>
            <source>Say first which ball was meant for which pocket; then it can be made.</source>
            <translation>Sagen Sie zuerst, welche Kugel für welche Tasche gedacht war; dann kann sie gelocht sein.</translation>
        </message>
        <message>
            <source>No referee watched this shot, so there is no ruling to replace.</source>
            <translation>Diesem Stoß hat kein Schiedsrichter zugesehen; es gibt keine Entscheidung zu ersetzen.</translation>
        </message>
        <message>
            <source>Neither ball was followed in this shot, so there are no names to swap.</source>
            <translation>Keine der Kugeln wurde in diesem Stoß verfolgt; es gibt keine Namen zu tauschen.</translation>
        </message>
        <message>
            <source>The ways of this shot do not reach so far; choose a time between them.</source>
            <translation>Die Wege dieses Stoßes reichen nicht so weit; wählen Sie eine Zeit dazwischen.</translation>
        </message>
        <message>
            <source>A later correction in this frame rests on this one; take that one back first.</source>
            <translation>Eine spätere Berichtigung in diesem Spiel beruht auf dieser; nehmen Sie jene zuerst zurück.</translation>
        </message>
        <message>
            <source>This frame is still being put in; undo the shot in Session instead.</source>
            <translation>Dieses Spiel wird noch eingegeben; machen Sie den Stoß stattdessen unter Sitzung rückgängig.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>tag</source>
            <translation>Stichwort</translation>
        </message>
        <message>
            <source>two shots in one</source>
            <translation>zwei Stöße in einem</translation>
        </message>
        <message>
            <source>one shot in two</source>
            <translation>ein Stoß in zweien</translation>
        </message>
        <message>
            <source>a ball put down before the shot</source>
            <translation>eine vor dem Stoß hingelegte Kugel</translation>
        </message>
        <message>
            <source>suggestion</source>
            <translation>Vorschlag</translation>
        </message>
        <message>
            <source>%1 was not put down at %2</source>
            <translation>%1 wurde bei %2 nicht hingelegt</translation>
        </message>
        <message>
            <source>%1 was put down at %2</source>
            <translation>%1 wurde bei %2 hingelegt</translation>
        </message>
        <message>
            <source>Put down at %1: measured %2, corrected to %3</source>
            <translation>Hingelegt bei %1: gemessen %2, berichtigt zu %3</translation>
        </message>
        <message>
            <source>%1 put down %2 away from where it was measured</source>
            <translation>%1 %2 neben dem gemessenen Ort hingelegt</translation>
        </message>
        <message>
            <source>Measured as one shot, split in two at %1</source>
            <translation>Als ein Stoß gemessen, bei %1 in zwei geteilt</translation>
        </message>
        <message>
            <source>Measured as two shots, joined at %1</source>
            <translation>Als zwei Stöße gemessen, bei %1 zusammengelegt</translation>
        </message>
        <message>
            <source>This frame was put in by hand: its shots have no film by which to part or join them.</source>
            <translation>Dieses Spiel wurde von Hand eingegeben: Seine Stöße haben keinen Film, nach dem sie zu teilen oder zusammenzulegen wären.</translation>
        </message>
        <message>
            <source>No shot follows in this frame, so there is nothing to join with.</source>
            <translation>In diesem Spiel folgt kein Stoß, mit dem er zusammengelegt werden könnte.</translation>
        </message>
        <message>
            <source>This ball was not put down there any more; choose again.</source>
            <translation>Diese Kugel gilt dort nicht mehr als hingelegt; bitte neu wählen.</translation>
        </message>
    </context>
    <context>
        <name>CueSection</name>
        <message>
            <source>Cue pointed to</source>
            <translation>Queue zielte auf</translation>
        </message>
        <message>
            <source>Ball went to</source>
            <translation>Kugel lief nach</translation>
        </message>
        <message>
            <source>Between them</source>
            <translation>Dazwischen</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Queueneigung</translation>
        </message>
        <message>
            <source>Tip, side</source>
            <translation>Stoßpunkt, Seite</translation>
        </message>
        <message>
            <source>Tip, height</source>
            <translation>Stoßpunkt, Höhe</translation>
        </message>
        <message>
            <source>Sway of the aim</source>
            <translation>Schwanken</translation>
        </message>
        <message>
            <source>Tip speed</source>
            <translation>Tempo der Spitze</translation>
        </message>
        <message>
            <source>Read from the tags on the cue.</source>
            <translation>Gelesen an den Marken auf dem Queue.</translation>
        </message>
        <message>
            <source>Read from the shaft over the cloth; its height is not seen.</source>
            <translation>Gelesen am Queue über dem Tuch; seine Höhe ist nicht zu sehen.</translation>
        </message>
        <message>
            <source>Between: + the ball went to the right of the cue's line.</source>
            <translation>Dazwischen: + die Kugel lief rechts der Queuelinie.</translation>
        </message>
        <message>
            <source>The tags on the cue were seen in too few images before the strike.</source>
            <translation>Die Marken auf dem Queue waren vor dem Abstoß in zu wenigen Bildern zu sehen.</translation>
        </message>
        <message>
            <source>The pitch log has a gap before this strike; let the sensor write without a break.</source>
            <translation>Die Neigungsdatei hat vor diesem Abstoß eine Lücke; lassen Sie den Sensor ohne Unterbrechung schreiben.</translation>
        </message>
        <message>
            <source>The pitch log has another clock than the film and was left out; start both together.</source>
            <translation>Die Neigungsdatei hat eine andere Uhr als der Film und blieb außer Acht; starten Sie beide zusammen.</translation>
        </message>
        <message>
            <source>The tags are too small for this camera; it needs %1.</source>
            <translation>Die Marken sind für diese Kamera zu klein; sie braucht %1.</translation>
        </message>
    </context>
    <context>
        <name>DrillCharts</name>
        <message>
            <source>Number of tries under each run; whiskers are 95 % intervals, hollow dots rest on too few.</source>
            <translation>Unter jedem Durchgang die Zahl der Versuche; Striche sind 95-%-Bereiche, hohle Punkte beruhen auf zu wenigen.</translation>
        </message>
    </context>
    <context>
        <name>DrillWords</name>
        <message>
            <source>Centre-line there and back</source>
            <translation>Mittellinie hin und zurück</translation>
        </message>
        <message>
            <source>The cue ball alone, from the head spot to the foot cushion and back over its start. Always off to one side: aim or unmeant side spin. Now left, now right: the stroke.</source>
            <translation>Die Weiße allein, vom Kopfpunkt zur Fußbande und zurück über ihren Ausgangspunkt. Immer zur selben Seite: Zielen oder ungewollter Seiteneffet. Mal links, mal rechts: der Stoß.</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>Gerade Stoppleiter</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer. The cue ball stops within one ball's width of the contact. Stay on a rung until eight of ten succeed.</source>
            <translation>Gerade Kugeln aus vier Entfernungen, jede einen Schritt länger. Die Weiße bleibt innerhalb einer Kugelbreite vom Treffpunkt stehen. Auf einer Stufe bleiben, bis acht von zehn gelingen.</translation>
        </message>
        <message>
            <source>Straight follow bands</source>
            <translation>Gerader Nachläufer in Zonen</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball follows into the first, second or third band behind the contact. Say the band before the stroke.</source>
            <translation>Eine gerade Kugel; die Weiße läuft in die erste, zweite oder dritte Zone hinter dem Treffpunkt nach. Die Zone vor dem Stoß ansagen.</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>Gerader Rückläufer in Zonen</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball comes back into the band that is called: stop, a quarter, a half or three quarters of the table's width.</source>
            <translation>Eine gerade Kugel; die Weiße läuft in die angesagte Zone zurück: Stopp, ein Viertel, die Hälfte oder drei Viertel der Tischbreite.</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>Ausspielen zur Kopfbande</translation>
        </message>
        <message>
            <source>From behind the head string to the foot cushion and back. The cue ball rests within half a diamond of the head cushion.</source>
            <translation>Von hinter der Kopflinie zur Fußbande und zurück. Die Weiße bleibt höchstens einen halben Diamanten vor der Kopfbande liegen.</translation>
        </message>
        <message>
            <source>Bare-table stop lines</source>
            <translation>Haltelinien auf leerem Tisch</translation>
        </message>
        <message>
            <source>The cue ball alone, to four lines in turn of distance: the middle, the foot cushion, the middle on the way back, and the head string's far side on the way back.</source>
            <translation>Die Weiße allein, nacheinander zu vier immer ferneren Linien: Mitte, Fußbande, Mitte auf dem Rückweg und hinter der Kopflinie auf dem Rückweg.</translation>
        </message>
        <message>
            <source>Object-ball pace to the rail</source>
            <translation>Tempo der Objektkugel zur Bande</translation>
        </message>
        <message>
            <source>A full hit sends the object ball down the table; it rests within half a diamond of the foot cushion.</source>
            <translation>Ein voller Treffer schickt die Objektkugel den Tisch hinunter; sie bleibt höchstens einen halben Diamanten vor der Fußbande liegen.</translation>
        </message>
        <message>
            <source>Cut fan</source>
            <translation>Schnittfächer</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball half a table's width away: straight, then cuts of 15, 30, 45 and 60 degrees. Misses on one side at every angle are aim; thick at every angle is throw not allowed for.</source>
            <translation>Die Kugel auf dem Fußpunkt, die Weiße eine halbe Tischbreite entfernt: gerade, dann Schnitte von 15, 30, 45 und 60 Grad. Fehler bei jedem Winkel zur selben Seite sind das Zielen; bei jedem Winkel zu dick ist nicht bedachte Mitnahme.</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>Lange Schnitte vom Fußpunkt</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball behind the head string: long cuts of about 33, 47 and 60 degrees.</source>
            <translation>Die Kugel auf dem Fußpunkt, die Weiße hinter der Kopflinie: lange Schnitte von etwa 33, 47 und 60 Grad.</translation>
        </message>
        <message>
            <source>Rail-frozen ball cut</source>
            <translation>Kugel an der Bande</translation>
        </message>
        <message>
            <source>The ball touches the long cushion; send it along the cushion into the corner. Watch whether ball or cushion is met first.</source>
            <translation>Die Kugel berührt die lange Bande; sie soll die Bande entlang in die Ecke laufen. Darauf achten, ob zuerst Kugel oder Bande getroffen wird.</translation>
        </message>
        <message>
            <source>Side-pocket pair</source>
            <translation>Mitteltaschen-Paar</translation>
        </message>
        <message>
            <source>One ball before the side pocket, cut from the head and from the foot. The pocket takes little at this angle: pace decides.</source>
            <translation>Eine Kugel vor der Mitteltasche, vom Kopf und vom Fuß her geschnitten. Die Tasche nimmt bei diesem Winkel wenig an: das Tempo entscheidet.</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>Dünner Schnitt</translation>
        </message>
        <message>
            <source>A cut of about 65 degrees into the corner; the cue ball must stay on the table. Note which side the misses go to.</source>
            <translation>Ein Schnitt von etwa 65 Grad in die Ecke; die Weiße muss auf dem Tisch bleiben. Merken, zu welcher Seite die Fehler gehen.</translation>
        </message>
        <message>
            <source>Stun to the mark</source>
            <translation>Stoppball zur Marke</translation>
        </message>
        <message>
            <source>A stun shot: the cue ball leaves along the tangent line and meets the long cushion in the marked piece. Short of it: draw; beyond it: follow.</source>
            <translation>Ein Stoppball: die Weiße läuft auf der Tangente weg und trifft die lange Bande im markierten Stück. Davor: Rücklauf; dahinter: Nachlauf.</translation>
        </message>
        <message>
            <source>Three-zone cue ball</source>
            <translation>Weiße in drei Zonen</translation>
        </message>
        <message>
            <source>One pot, three places for the cue ball, called in turn. Pot and landing are counted apart and together.</source>
            <translation>Eine Kugel, drei Plätze für die Weiße, reihum angesagt. Kugel und Platz werden einzeln und zusammen gezählt.</translation>
        </message>
        <message>
            <source>Row on the centre string</source>
            <translation>Reihe auf der Mittellinie</translation>
        </message>
        <message>
            <source>Five balls in a row across the table, cue ball in hand. Pot all of them; the cue ball touches no cushion.</source>
            <translation>Fünf Kugeln in einer Reihe quer über den Tisch, Weiße in der Hand. Alle lochen; die Weiße berührt keine Bande.</translation>
        </message>
        <message>
            <source>Correct-side two-ball</source>
            <translation>Zwei Kugeln, richtige Seite</translation>
        </message>
        <message>
            <source>Pot the first ball and come to the right side of the second: a cut of 15 to 45 degrees from the foot half. Then pot it.</source>
            <translation>Die erste Kugel lochen und auf die richtige Seite der zweiten kommen: ein Schnitt von 15 bis 45 Grad aus der Fußhälfte. Dann auch sie lochen.</translation>
        </message>
        <message>
            <source>Called three-ball pattern</source>
            <translation>Angesagte Folge aus drei Kugeln</translation>
        </message>
        <message>
            <source>Three balls spread out, cue ball in hand. Say order, pockets and landing places first, then play it as it was said.</source>
            <translation>Drei verstreute Kugeln, Weiße in der Hand. Erst Reihenfolge, Taschen und Plätze ansagen, dann so spielen.</translation>
        </message>
        <message>
            <source>Cue ball on the rail</source>
            <translation>Weiße an der Bande</translation>
        </message>
        <message>
            <source>The cue ball touches the cushion, so that only its top can be struck. A short stroke and a level cue pot more than force.</source>
            <translation>Die Weiße berührt die Bande, so dass nur ihr oberer Teil zu treffen ist. Ein kurzer Stoß mit flachem Queue locht mehr als Kraft.</translation>
        </message>
        <message>
            <source>Straight-back bank to the side</source>
            <translation>Über die Bande gerade zurück in die Mitte</translation>
        </message>
        <message>
            <source>The ball goes to the opposite long cushion and back into the side pocket. Note whether misses are long or short; pace changes the angle.</source>
            <translation>Die Kugel läuft zur gegenüberliegenden langen Bande und zurück in die Mitteltasche. Merken, ob Fehler zu lang oder zu kurz sind; das Tempo ändert den Winkel.</translation>
        </message>
        <message>
            <source>One-rail kick</source>
            <translation>Ein-Banden-Befreiung</translation>
        </message>
        <message>
            <source>A blocker stands in the straight line. Meet the ball by way of one cushion; better still, leave it hidden.</source>
            <translation>Im geraden Weg steht eine Kugel. Die Kugel über eine Bande treffen; noch besser: sie versteckt lassen.</translation>
        </message>
        <message>
            <source>Two-rail kick</source>
            <translation>Zwei-Banden-Befreiung</translation>
        </message>
        <message>
            <source>The same by way of two cushions. Any part of the ball counts.</source>
            <translation>Dasselbe über zwei Banden. Jeder Treffer zählt.</translation>
        </message>
        <message>
            <source>Hide-behind safety</source>
            <translation>Versteck hinter Kugeln</translation>
        </message>
        <message>
            <source>Meet the ball and bring the cue ball behind the two blockers, so that no straight way to the ball is left.</source>
            <translation>Die Kugel treffen und die Weiße hinter die beiden Sperrkugeln bringen, so dass kein gerader Weg zur Kugel bleibt.</translation>
        </message>
        <message>
            <source>Thin-hit distance safety</source>
            <translation>Dünne Sicherheit auf Abstand</translation>
        </message>
        <message>
            <source>A thin hit: the ball stays near the foot cushion, the cue ball comes back near the head cushion.</source>
            <translation>Ein dünner Treffer: die Kugel bleibt nahe der Fußbande, die Weiße kommt nahe an die Kopfbande zurück.</translation>
        </message>
        <message>
            <source>Break control</source>
            <translation>Kontrollierter Anstoß</translation>
        </message>
        <message>
            <source>A full rack, always from the same place: pot a ball and leave the cue ball in the middle of the table.</source>
            <translation>Volles Dreieck, immer vom selben Platz: eine Kugel lochen und die Weiße in der Tischmitte lassen.</translation>
        </message>
        <message>
            <source>Open-spread run</source>
            <translation>Freie Serie</translation>
        </message>
        <message>
            <source>Balls spread apart, none near a cushion, cue ball in hand: pot all of them in any order. The balls made before a miss are counted.</source>
            <translation>Verstreute Kugeln, keine nahe einer Bande, Weiße in der Hand: alle in beliebiger Folge lochen. Gezählt werden die Kugeln bis zum ersten Fehler.</translation>
        </message>
        <message>
            <source>straight</source>
            <translation>gerade</translation>
        </message>
        <message>
            <source>speed</source>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>Stopp</translation>
        </message>
        <message>
            <source>follow</source>
            <translation>Nachlauf</translation>
        </message>
        <message>
            <source>draw</source>
            <translation>Rücklauf</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>aim</source>
            <translation>Zielen</translation>
        </message>
        <message>
            <source>long</source>
            <translation>lang</translation>
        </message>
        <message>
            <source>rail</source>
            <translation>Bande</translation>
        </message>
        <message>
            <source>side pocket</source>
            <translation>Mitteltasche</translation>
        </message>
        <message>
            <source>position</source>
            <translation>Stellungsspiel</translation>
        </message>
        <message>
            <source>run</source>
            <translation>Serie</translation>
        </message>
        <message>
            <source>bank</source>
            <translation>Bandenball</translation>
        </message>
        <message>
            <source>kick</source>
            <translation>Befreiung</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>Sicherheit</translation>
        </message>
        <message>
            <source>break</source>
            <translation>Anstoß</translation>
        </message>
        <message>
            <source>Jump shots: wear eye protection, keep the space around the table clear, and let nobody stand where the ball may fly.</source>
            <translation>Sprungstöße: Augenschutz tragen, den Raum um den Tisch frei halten; niemand steht, wohin die Kugel fliegen kann.</translation>
        </message>
        <message>
            <source>Power breaks: balls may leave the table; nobody stands at the foot end, bystanders stay behind the player.</source>
            <translation>Harte Anstöße: Kugeln können vom Tisch springen; niemand steht am Fußende, Zuschauer bleiben hinter dem Spieler.</translation>
        </message>
        <message>
            <source>cut %1 to the left</source>
            <translation>Schnitt %1 nach links</translation>
        </message>
        <message>
            <source>cut %1 to the right</source>
            <translation>Schnitt %1 nach rechts</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>aus %1</translation>
        </message>
        <message>
            <source>zone at %1 diamonds along, %2 across</source>
            <translation>Zone bei %1 Diamanten längs, %2 quer</translation>
        </message>
        <message numerus="yes">
            <source>by way of %n cushion(s)</source>
            <translation>
                <numerusform>über %n Bande</numerusform>
                <numerusform>über %n Banden</numerusform>
            </translation>
        </message>
        <message>
            <source>a ball falls</source>
            <translation>eine Kugel fällt</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1 fällt</translation>
        </message>
        <message numerus="yes">
            <source>%1 by way of %n cushion(s) to %2</source>
            <translation>
                <numerusform>%1 über %n Bande nach %2</numerusform>
                <numerusform>%1 über %n Banden nach %2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 nach %2</translation>
        </message>
        <message>
            <source>%1 rests in the zone</source>
            <translation>%1 bleibt in der Zone liegen</translation>
        </message>
        <message numerus="yes">
            <source>%1 is met by way of %n cushion(s)</source>
            <translation>
                <numerusform>%1 wird über %n Bande getroffen</numerusform>
                <numerusform>%1 wird über %n Banden getroffen</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 is met first</source>
            <translation>%1 wird zuerst getroffen</translation>
        </message>
        <message>
            <source>%1 is hidden from the cue ball</source>
            <translation>%1 ist vor der Weißen versteckt</translation>
        </message>
        <message>
            <source>a cut of %1 to %2 is left on %3</source>
            <translation>auf %3 bleibt ein Schnitt von %1 bis %2</translation>
        </message>
        <message>
            <source>the cue ball meets the cushion at the mark</source>
            <translation>die Weiße trifft die Bande an der Marke</translation>
        </message>
        <message>
            <source>the cue ball comes back over its start</source>
            <translation>die Weiße kommt über ihren Ausgangspunkt zurück</translation>
        </message>
        <message>
            <source>every ball falls</source>
            <translation>jede Kugel fällt</translation>
        </message>
        <message>
            <source>the cue ball touches no cushion</source>
            <translation>die Weiße berührt keine Bande</translation>
        </message>
        <message>
            <source>it went as it was called</source>
            <translation>es lief wie angesagt</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>innerhalb</translation>
        </message>
        <message>
            <source>%1 outside</source>
            <translation>%1 außerhalb</translation>
        </message>
        <message>
            <source>%1 open</source>
            <translation>%1 offen</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>Schnitt %1</translation>
        </message>
        <message>
            <source>%1 mm off</source>
            <translation>%1 mm daneben</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s)</source>
            <translation>
                <numerusform>%n Kugel</numerusform>
                <numerusform>%n Kugeln</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: %2 diamonds along, %3 across</source>
            <translation>%1: %2 Diamanten längs, %3 quer</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>%1 von der Kopfbande</translation>
        </message>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>%1 von der Fußbande</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>%1 von rechts</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>%1 von links</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>noch keine</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>between %1 and %2 %</source>
            <translation>zwischen %1 und %2 %</translation>
        </message>
        <message>
            <source>%1, %2: not enough yet for a share</source>
            <translation>%1, %2: noch zu wenig für einen Anteil</translation>
        </message>
        <message>
            <source>%1: %2 %, %3</source>
            <translation>%1: %2 %, %3</translation>
        </message>
        <message>
            <source>One run more, and the two can be compared.</source>
            <translation>Noch ein Durchgang, dann lassen sich die beiden vergleichen.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough yet to compare: at least %n try(s) in the last run and in those before.</source>
            <translation>
                <numerusform>Noch zu wenig zum Vergleichen: mindestens %n Versuch im letzten Durchgang und in denen davor.</numerusform>
                <numerusform>Noch zu wenig zum Vergleichen: mindestens %n Versuche im letzten Durchgang und in denen davor.</numerusform>
            </translation>
        </message>
        <message>
            <source>between %1 and %2</source>
            <translation>zwischen %1 und %2</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): more than chance.</source>
            <translation>Der letzte Durchgang weicht um %1 Punkte von den früheren ab (%2): mehr als Zufall.</translation>
        </message>
        <message>
            <source>The last run is as good as those before.</source>
            <translation>Der letzte Durchgang ist so gut wie die früheren.</translation>
        </message>
        <message>
            <source>The drill has no set-up; add one.</source>
            <translation>Die Übung hat keine Aufstellung; eine hinzufügen.</translation>
        </message>
        <message>
            <source>Nothing is asked; choose what a try is to bring about.</source>
            <translation>Es ist nichts verlangt; wählen, was ein Versuch erreichen soll.</translation>
        </message>
        <message>
            <source>The set-ups ask different things; give all of them the same kinds of goals.</source>
            <translation>Die Aufstellungen verlangen Verschiedenes; allen dieselben Arten von Zielen geben.</translation>
        </message>
        <message>
            <source>The number of tries must be from 1 to %1.</source>
            <translation>Die Zahl der Versuche muss von 1 bis %1 sein.</translation>
        </message>
        <message>
            <source>%1 is asked for but does not lie on the table; put it there.</source>
            <translation>%1 wird verlangt, liegt aber nicht auf dem Tisch; hinlegen.</translation>
        </message>
        <message>
            <source>A goal lacks its ball, pocket or zone; choose it.</source>
            <translation>Einem Ziel fehlt Kugel, Tasche oder Zone; auswählen.</translation>
        </message>
        <message>
            <source>%1 lies there twice; take one away.</source>
            <translation>%1 liegt zweimal da; eine wegnehmen.</translation>
        </message>
        <message>
            <source>%1 lies off the playing surface; move it.</source>
            <translation>%1 liegt neben der Spielfläche; verschieben.</translation>
        </message>
        <message>
            <source>%1 and %2 overlap; move one of them.</source>
            <translation>%1 und %2 überlappen; eine verschieben.</translation>
        </message>
        <message>
            <source>So many balls do not find room so far apart; ask for fewer or let them lie closer.</source>
            <translation>So viele Kugeln finden mit so viel Abstand keinen Platz; weniger verlangen oder sie näher liegen lassen.</translation>
        </message>
        <message>
            <source>A zone lies beyond the cushions; move it.</source>
            <translation>Eine Zone liegt jenseits der Banden; verschieben.</translation>
        </message>
        <message>
            <source>%1 cannot be cut that thinly; move a ball or choose another pocket.</source>
            <translation>%1 lässt sich nicht so dünn schneiden; eine Kugel verschieben oder eine andere Tasche wählen.</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): may be chance.</source>
            <translation>Der letzte Durchgang weicht um %1 Punkte von den früheren ab (%2): kann Zufall sein.</translation>
        </message>
        <message>
            <source>So small a difference takes more tries to show than anyone plays.</source>
            <translation>Um einen so kleinen Unterschied zu zeigen, brauchte es mehr Versuche, als jemand spielt.</translation>
        </message>
        <message>
            <source>About %1 tries before and as many after would tell.</source>
            <translation>Etwa %1 Versuche vorher und ebenso viele nachher würden es zeigen.</translation>
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
            <translation>Sitzungen, in denen sonst niemand gespielt hat</translation>
        </message>
        <message>
            <source>Frames of these sessions</source>
            <translation>Frames dieser Sitzungen</translation>
        </message>
        <message>
            <source>Placed balls of these sessions</source>
            <translation>Hingelegte Kugeln dieser Sitzungen</translation>
        </message>
        <message>
            <source>Table fingerprints of these sessions</source>
            <translation>Tischabdrücke dieser Sitzungen</translation>
        </message>
        <message>
            <source>Seats in sessions with others</source>
            <translation>Plätze in Sitzungen mit anderen</translation>
        </message>
        <message>
            <source>Shots</source>
            <translation>Stöße</translation>
        </message>
        <message>
            <source>Places of balls</source>
            <translation>Orte von Kugeln</translation>
        </message>
        <message>
            <source>Deliveries</source>
            <translation>Ausführungen</translation>
        </message>
        <message>
            <source>Contacts and falls</source>
            <translation>Berührungen und Fälle</translation>
        </message>
        <message>
            <source>Pocketed balls</source>
            <translation>Gelochte Kugeln</translation>
        </message>
        <message>
            <source>Tracks</source>
            <translation>Spuren</translation>
        </message>
        <message>
            <source>Rulings</source>
            <translation>Entscheidungen</translation>
        </message>
        <message>
            <source>Suggestions</source>
            <translation>Vorschläge</translation>
        </message>
        <message>
            <source>Accounts of misses</source>
            <translation>Fehlerrechnungen</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>Korrekturen</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Schlagwörter</translation>
        </message>
        <message>
            <source>Lines of consent</source>
            <translation>Zeilen zur Einwilligung</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Gruppen</translation>
        </message>
        <message>
            <source>Sessions under way</source>
            <translation>Sitzungen im Gange</translation>
        </message>
        <message>
            <source>Notes about others that lose their author's name</source>
            <translation>Notizen zu anderen, die den Namen ihres Autors verlieren</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose their author's name</source>
            <translation>Korrekturen an Stößen anderer, die den Namen ihres Autors verlieren</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose the name</source>
            <translation>Korrekturen an Stößen anderer, die den Namen verlieren</translation>
        </message>
        <message>
            <source>Rulings on others' shots that lose the name</source>
            <translation>Entscheidungen zu Stößen anderer, die den Namen verlieren</translation>
        </message>
        <message>
            <source>What goes with %1</source>
            <translation>Was mit %1 verschwindet</translation>
        </message>
        <message>
            <source>The player's name, playing hand and whether a minor</source>
            <translation>Name des Spielers, Spielhand und ob minderjährig</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Films: the files are yours and are deleted only when you ask for it</source>
            <translation>Filme: Die Dateien gehören Ihnen und werden nur auf Wunsch gelöscht</translation>
        </message>
        <message>
            <source>%1 (others play in it too: it stays in the record)</source>
            <translation>%1 (darin spielen auch andere: bleibt in der Aufzeichnung)</translation>
        </message>
        <message>
            <source>%1 (the record forgets it)</source>
            <translation>%1 (die Aufzeichnung vergisst ihn)</translation>
        </message>
        <message>
            <source>Texts of others with the name, which is taken out</source>
            <translation>Texte anderer mit dem Namen, der herausgenommen wird</translation>
        </message>
        <message>
            <source>"%1" becomes "%2"</source>
            <translation>„%1“ wird „%2“</translation>
        </message>
        <message>
            <source>Older copies beside the record that hold the name</source>
            <translation>Ältere Kopien neben der Aufzeichnung, die den Namen enthalten</translation>
        </message>
        <message>
            <source>What stays</source>
            <translation>Was bleibt</translation>
        </message>
        <message>
            <source>Others' shots in sessions with this player: %1, with %2 places of balls, which name nobody</source>
            <translation>Stöße anderer in Sitzungen mit diesem Spieler: %1, mit %2 Orten von Kugeln, die niemanden nennen</translation>
        </message>
        <message>
            <source>Consents of others that name this person as giver or writer, as evidence: %1</source>
            <translation>Einwilligungen anderer, die diese Person als Gebenden oder Schreibenden nennen, als Beleg: %1</translation>
        </message>
        <message>
            <source>A random number without a name, so that no merge brings the player back</source>
            <translation>Eine Zufallszahl ohne Namen, damit keine Zusammenführung den Spieler zurückbringt</translation>
        </message>
        <message>
            <source>Reports, exports and copies that were made of the record elsewhere</source>
            <translation>Berichte, Exporte und Kopien der Aufzeichnung, die anderswo liegen</translation>
        </message>
        <message>
            <source>%1 was deleted.</source>
            <translation>%1 wurde gelöscht.</translation>
        </message>
        <message>
            <source>%1 was not there any more.</source>
            <translation>%1 war nicht mehr da.</translation>
        </message>
        <message>
            <source>%1 is another file by now and was left alone.</source>
            <translation>%1 ist inzwischen eine andere Datei und blieb unberührt.</translation>
        </message>
        <message>
            <source>%1 could not be deleted (%2); delete it yourself.</source>
            <translation>%1 konnte nicht gelöscht werden (%2); löschen Sie die Datei selbst.</translation>
        </message>
        <message>
            <source>The record's file could not be written anew, because another program uses it or the disk is full: old pages may still hold the name. Close the other programs and run "ferrule erase --compact" with the same name.</source>
            <translation>Die Datei der Aufzeichnung konnte nicht neu geschrieben werden, weil ein anderes Programm sie benutzt oder der Datenträger voll ist: Alte Seiten können den Namen noch enthalten. Schließen Sie die anderen Programme und rufen Sie „ferrule erase --compact“ mit demselben Namen auf.</translation>
        </message>
        <message>
            <source>The name is nowhere in the record's files any more.</source>
            <translation>Der Name steht nirgends mehr in den Dateien der Aufzeichnung.</translation>
        </message>
        <message>
            <source>The name, or its letters within other words, still stands in the record's files: %1 times.</source>
            <translation>Der Name, oder seine Buchstaben in anderen Wörtern, steht noch in den Dateien der Aufzeichnung: %1 Mal.</translation>
        </message>
        <message>
            <source>%1 was erased.</source>
            <translation>%1 wurde gelöscht.</translation>
        </message>
        <message>
            <source>Runs of drills</source>
            <translation>Durchgänge von Übungen</translation>
        </message>
        <message>
            <source>Tries in these runs</source>
            <translation>Versuche in diesen Durchgängen</translation>
        </message>
    </context>
    <context>
        <name>ErrorSentence</name>
        <message>
            <source>%1 has an unusable value for "%2"; correct it.</source>
            <translation>%1 hat für „%2“ einen unbrauchbaren Wert; berichtigen Sie ihn.</translation>
        </message>
        <message>
            <source>%1 gives %3 for "%2", outside %4 to %5; measure it again.</source>
            <translation>%1 gibt für „%2“ %3 an, außerhalb von %4 bis %5; messen Sie noch einmal.</translation>
        </message>
        <message>
            <source>The board "%1" needs 3 to 100 columns and rows, such as 9x6; count them on the print.</source>
            <translation>Die Tafel „%1“ braucht 3 bis 100 Spalten und Zeilen, etwa 9x6; zählen Sie sie auf dem Ausdruck.</translation>
        </message>
        <message>
            <source>The board "%1" needs its square's side in millimetres, 1 to 1000; measure it on the print.</source>
            <translation>Die Tafel „%1“ braucht die Kante ihrer Felder in Millimetern, 1 bis 1000; messen Sie auf dem Ausdruck.</translation>
        </message>
        <message>
            <source>The board "%1" needs its marker's side in millimetres, smaller than the square; measure it on the print.</source>
            <translation>Die Tafel „%1“ braucht die Kante ihrer Marken in Millimetern, kleiner als das Feld; messen Sie auf dem Ausdruck.</translation>
        </message>
        <message>
            <source>The board "%1" names an unknown set of markers; use the name it was printed with, such as DICT_5X5_100.</source>
            <translation>Die Tafel „%1“ nennt einen unbekannten Markensatz; nehmen Sie den Namen, mit dem sie gedruckt wurde, etwa DICT_5X5_100.</translation>
        </message>
        <message>
            <source>The board "%1" has more squares than its set of markers can fill; check the counts or name a larger set.</source>
            <translation>Die Tafel „%1“ hat mehr Felder, als ihr Markensatz füllen kann; prüfen Sie die Anzahlen oder nennen Sie einen größeren Satz.</translation>
        </message>
        <message>
            <source>The board "%1" is not in the form chessboard:9x6:25 or charuco:8x6:40:30:DICT_5X5_100; write it so.</source>
            <translation>Die Tafel „%1“ hat nicht die Form chessboard:9x6:25 oder charuco:8x6:40:30:DICT_5X5_100; schreiben Sie sie so.</translation>
        </message>
        <message>
            <source>(%1 % of the cells there, %2 % are needed); add stills with the board there.</source>
            <translation>(%1 % der Zellen dort, nötig sind %2 %); fügen Sie Aufnahmen mit der Tafel dort hinzu.</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the left of the picture %2</source>
            <translation>Die Aufnahmen von %1 zeigen die Tafel kaum links im Bild %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the right of the picture %2</source>
            <translation>Die Aufnahmen von %1 zeigen die Tafel kaum rechts im Bild %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the top of the picture %2</source>
            <translation>Die Aufnahmen von %1 zeigen die Tafel kaum oben im Bild %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the bottom of the picture %2</source>
            <translation>Die Aufnahmen von %1 zeigen die Tafel kaum unten im Bild %2</translation>
        </message>
        <message>
            <source>The stills of %1 show the board in too little of the picture (%2 %, %3 % are needed); add stills with the board in the empty parts.</source>
            <translation>Die Aufnahmen von %1 zeigen die Tafel in zu wenig vom Bild (%2 %, nötig sind %3 %); fügen Sie Aufnahmen mit der Tafel in den leeren Teilen hinzu.</translation>
        </message>
        <message>
            <source>No lens explains the stills of %1; check the board's counts and take stills with the board tilted.</source>
            <translation>Kein Objektiv erklärt die Aufnahmen von %1; prüfen Sie die Anzahlen der Tafel und nehmen Sie sie auch geneigt auf.</translation>
        </message>
        <message>
            <source>The stills of %1 do not fix the lens out to the corners of the picture; add stills with the board in the corners.</source>
            <translation>Die Aufnahmen von %1 bestimmen das Objektiv nicht bis in die Bildecken; fügen Sie Aufnahmen mit der Tafel in den Ecken hinzu.</translation>
        </message>
        <message>
            <source>%1 holds a lens that cannot be used (%2); calibrate it again.</source>
            <translation>%1 enthält ein unbrauchbares Objektiv (%2); kalibrieren Sie es neu.</translation>
        </message>
        <message>
            <source>%1 lists %2 tags and %3 are needed; measure the tags into a table file, or set up from the table itself.</source>
            <translation>%1 nennt %2 Marken, nötig sind %3; messen Sie die Marken in eine Tischdatei ein, oder richten Sie nach dem Tisch selbst ein.</translation>
        </message>
        <message>
            <source>%1 shows %2 of the table's tags and %3 are needed; uncover or light them, and check the set of markers in the table file.</source>
            <translation>%1 zeigt %2 der Marken des Tisches, nötig sind %3; decken Sie sie auf oder beleuchten Sie sie, und prüfen Sie den Markensatz in der Tischdatei.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 twice; cover or remove one of them.</source>
            <translation>%1 zeigt die Marke %2 zweimal; verdecken oder entfernen Sie eine davon.</translation>
        </message>
        <message>
            <source>%1 shows tags %2 and %3 in each other's place; swap them, or correct the table file.</source>
            <translation>%1 zeigt die Marken %2 und %3 vertauscht; tauschen Sie sie, oder berichtigen Sie die Tischdatei.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 turned by %3 degrees from what the table file says; turn it, or correct the file.</source>
            <translation>%1 zeigt die Marke %2 um %3 Grad anders gedreht als in der Tischdatei; drehen Sie sie, oder berichtigen Sie die Datei.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 about %3 mm from where the table file says; measure it again, and check that the lens belongs to this camera.</source>
            <translation>%1 zeigt die Marke %2 etwa %3 mm neben der Stelle aus der Tischdatei; messen Sie noch einmal, und prüfen Sie, ob das Objektiv zu dieser Kamera gehört.</translation>
        </message>
        <message>
            <source>%1 shows tags that fit no camera position; check the table file and the lens.</source>
            <translation>%1 zeigt Marken, die zu keinem Kamerastandort passen; prüfen Sie Tischdatei und Objektiv.</translation>
        </message>
        <message>
            <source>the turn of the picture</source>
            <translation>die Drehung des Bildes</translation>
        </message>
        <message>
            <source>the image size</source>
            <translation>die Bildgröße</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>das Objektiv</translation>
        </message>
        <message>
            <source>the camera's place</source>
            <translation>den Kamerastandort</translation>
        </message>
        <message>
            <source>There is no file %1; check the path.</source>
            <translation>Die Datei %1 gibt es nicht; prüfen Sie den Pfad.</translation>
        </message>
        <message>
            <source>%1 is empty; copy or export it again.</source>
            <translation>%1 ist leer; kopieren oder exportieren Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>%1 cannot be read (%2); check its permissions.</source>
            <translation>%1 lässt sich nicht lesen (%2); prüfen Sie die Zugriffsrechte.</translation>
        </message>
        <message>
            <source>%1 is a folder; choose a file in it.</source>
            <translation>%1 ist ein Ordner; wählen Sie eine Datei darin.</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another folder.</source>
            <translation>%1 lässt sich nicht schreiben (%2); wählen Sie einen anderen Ordner.</translation>
        </message>
        <message>
            <source>%1 is not in the expected form (%2); make it again or correct it.</source>
            <translation>%1 hat nicht die erwartete Form (%2); erstellen Sie die Datei neu oder berichtigen Sie sie.</translation>
        </message>
        <message>
            <source>%1 has no value for "%2"; add it.</source>
            <translation>%1 hat keinen Wert für „%2“; ergänzen Sie ihn.</translation>
        </message>
        <message>
            <source>%1 is not a film that can be read; export it again as MP4 or MKV.</source>
            <translation>%1 ist kein lesbarer Film; exportieren Sie ihn noch einmal als MP4 oder MKV.</translation>
        </message>
        <message>
            <source>%1 holds sound but no picture; choose the film itself.</source>
            <translation>%1 enthält Ton, aber kein Bild; wählen Sie den Film selbst.</translation>
        </message>
        <message>
            <source>%1 breaks off before its first whole image; copy it from the camera again.</source>
            <translation>%1 bricht vor dem ersten ganzen Bild ab; kopieren Sie den Film noch einmal von der Kamera.</translation>
        </message>
        <message>
            <source>%1 is %2 but the lens %3 was made at %4, another shape of picture; calibrate the lens in the film's mode.</source>
            <translation>%1 hat %2, das Objektiv %3 aber %4, ein anderes Seitenverhältnis; kalibrieren Sie das Objektiv in der Betriebsart des Films.</translation>
        </message>
        <message>
            <source>%1 is %2 but %3 was made at %4; calibrate the rig on a film of this size.</source>
            <translation>%1 hat %2, %3 wurde aber bei %4 gemacht; bestimmen Sie den Kamerastandort mit einem Film dieser Größe.</translation>
        </message>
        <message>
            <source>%1 is not a picture that can be read; leave it out or export it again as JPEG or PNG.</source>
            <translation>%1 ist kein lesbares Bild; lassen Sie es weg oder exportieren Sie es noch einmal als JPEG oder PNG.</translation>
        </message>
        <message>
            <source>%1 is %2 while the stills before it are %3; use stills of one camera at one size.</source>
            <translation>%1 hat %2, die Aufnahmen davor haben %3; nehmen Sie Aufnahmen einer Kamera in einer Größe.</translation>
        </message>
        <message>
            <source>None of %2 stills shows the whole board "%1"; check its counts and keep it flat, sharp and in the picture.</source>
            <translation>Keine von %2 Aufnahmen zeigt die ganze Tafel „%1“; prüfen Sie ihre Anzahlen und halten Sie sie eben, scharf und ganz im Bild.</translation>
        </message>
        <message>
            <source>The stills show the board "%1" in the old layout, with the markers on the other squares; print it again, or use one with an odd number of rows.</source>
            <translation>Die Aufnahmen zeigen die Tafel „%1“ in der alten Anordnung, mit den Marken auf den anderen Feldern; drucken Sie sie neu, oder nehmen Sie eine mit ungerader Zeilenzahl.</translation>
        </message>
        <message>
            <source>%1 is mirrored; switch off the mirror setting of the camera and film again.</source>
            <translation>%1 ist gespiegelt; schalten Sie die Spiegelung der Kamera aus und filmen Sie noch einmal.</translation>
        </message>
        <message>
            <source>Only %2 stills show the board %1 well enough and %3 are needed; take more.</source>
            <translation>Nur %2 Aufnahmen zeigen die Tafel %1 gut genug, nötig sind %3; nehmen Sie mehr auf.</translation>
        </message>
        <message>
            <source>%1 corrects %2 twice; make the rig again from the film and the lens as they came.</source>
            <translation>%1 korrigiert %2 zweimal; richten Sie noch einmal ein, mit unverändertem Film und Objektiv.</translation>
        </message>
        <message>
            <source>No balls were found in %1; check that the rig and the table file belong to this film.</source>
            <translation>In %1 wurden keine Kugeln gefunden; prüfen Sie, ob Einrichtung und Tischdatei zu diesem Film gehören.</translation>
        </message>
        <message>
            <source>%1 is in use by another program; close it there and try again.</source>
            <translation>%1 wird von einem anderen Programm benutzt; schließen Sie die Datei dort und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>%1 may only be read; copy it to a folder of your own.</source>
            <translation>%1 darf nur gelesen werden; kopieren Sie die Datei in einen eigenen Ordner.</translation>
        </message>
        <message>
            <source>%1 may only be read (%2); copy it to a folder of your own.</source>
            <translation>%1 darf nur gelesen werden (%2); kopieren Sie die Datei in einen eigenen Ordner.</translation>
        </message>
        <message>
            <source>%1 was written by a later version (form %2, this one knows %3); update this program.</source>
            <translation>%1 stammt von einer neueren Version (Form %2, diese kennt %3); aktualisieren Sie das Programm.</translation>
        </message>
        <message>
            <source>%1 is not a record; choose another file.</source>
            <translation>%1 ist keine Aufzeichnung; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>%1 is not a record (%2); choose another file.</source>
            <translation>%1 ist keine Aufzeichnung (%2); wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>There is no room left to write %1; free some disk space. Nothing that was saved is lost.</source>
            <translation>Für %1 ist kein Platz mehr; schaffen Sie Platz auf dem Datenträger. Nichts Gespeichertes ging verloren.</translation>
        </message>
        <message>
            <source>%1 is damaged (%2); open the newest backup beside it.</source>
            <translation>%1 ist beschädigt (%2); öffnen Sie die neueste Sicherung daneben.</translation>
        </message>
        <message>
            <source>%1 is already in the record; choose another name.</source>
            <translation>%1 ist schon in der Aufzeichnung; wählen Sie einen anderen Namen.</translation>
        </message>
        <message>
            <source>%1 is already in the record as session "%2"; add --again to measure it once more beside it.</source>
            <translation>%1 ist schon als Sitzung „%2“ in der Aufzeichnung; mit --again wird der Film daneben noch einmal gemessen.</translation>
        </message>
        <message>
            <source>There is no %1 in %2; check the spelling.</source>
            <translation>%1 gibt es in %2 nicht; prüfen Sie die Schreibweise.</translation>
        </message>
        <message>
            <source>%1 strikes the ball %2 radii from its centre, past the miscue limit of %3; move the tip point inward.</source>
            <translation>%1 trifft die Kugel %2 Radien neben der Mitte, jenseits der Abrutschgrenze von %3; rücken Sie den Stoßpunkt nach innen.</translation>
        </message>
        <message>
            <source>%1 has the balls %2 overlapping by %3 mm, more than %4; correct their places.</source>
            <translation>In %1 überlappen die Kugeln %2 um %3 mm, mehr als %4; berichtigen Sie ihre Plätze.</translation>
        </message>
        <message>
            <source>%1 has the ball %2 outside the table; correct its place.</source>
            <translation>In %1 liegt die Kugel %2 außerhalb des Tisches; berichtigen Sie ihren Platz.</translation>
        </message>
        <message>
            <source>Stopped before the end; what was recorded until then is kept.</source>
            <translation>Vor dem Ende angehalten; was bis dahin aufgezeichnet wurde, bleibt.</translation>
        </message>
        <message>
            <source>The cushions in %1 fit no camera over this table; check the table's size in the table file.</source>
            <translation>Die Banden in %1 passen zu keiner Kamera über diesem Tisch; prüfen Sie die Tischgröße in der Tischdatei.</translation>
        </message>
        <message>
            <source>%1 shows the noses of %2 cushions, and every side of the table is needed; film the whole table from above, in even light, without people before it.</source>
            <translation>%1 zeigt die Nasen von %2 Banden, gebraucht wird jede Seite des Tisches; filmen Sie den ganzen Tisch von oben, bei gleichmäßigem Licht und ohne Menschen davor.</translation>
        </message>
        <message>
            <source>%1 leaves no legal shot: no ball that may be played is on the table or can be reached; check the balls, the game and the group.</source>
            <translation>%1 lässt keinen erlaubten Stoß zu: Keine spielbare Kugel liegt auf dem Tisch oder ist zu erreichen; prüfen Sie Kugeln, Disziplin und Gruppe.</translation>
        </message>
        <message>
            <source>%1 shows %2 of the projected tags on the cloth and %3 are needed; darken the room, clear the table, and let the projector's picture cover most of it.</source>
            <translation>%1 zeigt %2 der projizierten Marken auf dem Tuch, nötig sind %3; Raum abdunkeln, Tisch leeren und das Bild des Projektors den größten Teil decken lassen.</translation>
        </message>
        <message>
            <source>%1 shows the projected tag %2 twice; switch off the second projector or the other grid.</source>
            <translation>%1 zeigt die projizierte Marke %2 zweimal; den zweiten Projektor oder das andere Gitter ausschalten.</translation>
        </message>
        <message>
            <source>The projected tags in %1 do not lie as one picture on a flat cloth (%2 mm off); check that the grid file belongs to the picture that was sent, and that camera and projector stood still.</source>
            <translation>Die projizierten Marken in %1 liegen nicht als ein Bild auf einem ebenen Tuch (%2 mm daneben); prüfen, ob die Gitterdatei zum gesendeten Bild gehört und ob Kamera und Projektor still standen.</translation>
        </message>
        <message>
            <source>The grid in %1 is mirrored; switch off the projector's mirror or rear setting.</source>
            <translation>Das Gitter in %1 ist gespiegelt; die Spiegel- oder Rückprojektion des Projektors ausschalten.</translation>
        </message>
        <message>
            <source>"%1" does not fit on this paper with its margins; choose larger paper or smaller squares.</source>
            <translation>„%1“ passt mit seinen Rändern nicht auf dieses Papier; größeres Papier oder kleinere Felder wählen.</translation>
        </message>
        <message>
            <source>The printer drew the board "%1" %2 mm across and %3 mm down where both should be equal; print it again without fitting it to the page.</source>
            <translation>Der Drucker hat die Tafel „%1“ quer mit %2 mm und hoch mit %3 mm gezeichnet, wo beides gleich sein müsste; ohne Anpassen an die Seite neu drucken.</translation>
        </message>
        <message>
            <source>Every still that shows the board "%1" is blurred; focus, expose shorter or put the board down, and take them again.</source>
            <translation>Alle Standbilder, die die Tafel „%1“ zeigen, sind unscharf; scharf stellen, kürzer belichten oder die Tafel ablegen und neu aufnehmen.</translation>
        </message>
    </context>
    <context>
        <name>FigureWords</name>
        <message>
            <source>not enough yet: two sessions with %1 or more are needed</source>
            <translation>noch nicht genug: zwei Sitzungen mit mindestens %1 sind nötig</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>Streuung des Zielens</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>Streuung des Tempos bei wiederholten Aufstellungen</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>Streuung des Tempos</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>Stöße auf der Zielscheibe</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>Karte der Fehlstöße</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>Auf welcher Seite die Fehlstöße liegen</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>Gelocht nach Tasche</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>Tempo: verlangt und gespielt</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>Wo die Weiße liegen blieb</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>Wo das Leder die Kugel traf</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>Gleiche Stöße unter anderen Umständen</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>Übung: %1</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>Übung</translation>
        </message>
        <message>
            <source>no run of a drill in this selection</source>
            <translation>keine Runde einer Übung in dieser Auswahl</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Wahl und Ausführung</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>Stellung zur nächsten Kugel</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>Chancen, wie genannt und wie eingetroffen</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>Das Spiel</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>Sicherheitsstöße und was danach kam</translation>
        </message>
        <message>
            <source>no safety in this selection</source>
            <translation>kein Sicherheitsstoß in dieser Auswahl</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>Gelocht nach dem Weg in die Tasche</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>Gelocht, nach Schnitt und Abstand der Weißen</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>Gelocht, nach Schnitt und Abstand zur Tasche</translation>
        </message>
    </context>
    <context>
        <name>FilmWords</name>
        <message>
            <source>No film is kept: the consent of %1 to being filmed has run out; note a new one in Players.</source>
            <translation>Kein Film wird behalten: Die Einwilligung von %1, gefilmt zu werden, ist abgelaufen; vermerken Sie in Spieler eine neue.</translation>
        </message>
        <message>
            <source>No film is kept: %1 has withdrawn the consent to being filmed.</source>
            <translation>Kein Film wird behalten: %1 hat die Einwilligung, gefilmt zu werden, widerrufen.</translation>
        </message>
        <message>
            <source>No film is kept: for %1, a minor, a guardian must consent; note it in Players.</source>
            <translation>Kein Film wird behalten: Für %1, minderjährig, muss ein Vormund einwilligen; vermerken Sie es in Spieler.</translation>
        </message>
        <message>
            <source>No film is kept: no consent of %1 to being filmed is noted in Players.</source>
            <translation>Kein Film wird behalten: In Spieler ist keine Einwilligung von %1 vermerkt, gefilmt zu werden.</translation>
        </message>
        <message>
            <source>No film is kept: name those who play, so that their consent can be looked up.</source>
            <translation>Kein Film wird behalten: Nennen Sie, wer spielt, damit die Einwilligung nachgesehen werden kann.</translation>
        </message>
        <message>
            <source>No film is kept: these players' consents to being filmed are missing or no longer hold: %1.</source>
            <translation>Kein Film wird behalten: Die Einwilligungen dieser Spieler fehlen oder gelten nicht mehr: %1.</translation>
        </message>
        <message>
            <source>No film is kept: %1</source>
            <comment>a sentence</comment>
            <translation>Kein Film wird behalten: %1</translation>
        </message>
        <message>
            <source>The film ended after %1 images: the disk has no room for more. Measuring goes on.</source>
            <translation>Der Film endete nach %1 Bildern: Auf dem Datenträger ist kein Platz mehr. Gemessen wird weiter.</translation>
        </message>
        <message>
            <source>Filming: %1 images, none dropped</source>
            <translation>Film läuft: %1 Bilder, keines ausgelassen</translation>
        </message>
        <message>
            <source>Filming: %1 images, %2 dropped</source>
            <translation>Film läuft: %1 Bilder, %2 ausgelassen</translation>
        </message>
    </context>
    <context>
        <name>FirstPage</name>
        <message>
            <source>There is no shot of this player in this period, so there is nothing to report. Choose another period, or measure a film first.</source>
            <translation>Von dieser Person gibt es in diesem Zeitraum keinen Stoß, also nichts zu berichten. Wählen Sie einen anderen Zeitraum oder messen Sie zuerst einen Film.</translation>
        </message>
        <message>
            <source>In short</source>
            <translation>In Kürze</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>ab %1</translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>bis %1</translation>
        </message>
        <message>
            <source>the whole record</source>
            <translation>die ganze Aufzeichnung</translation>
        </message>
        <message>
            <source>Progress report</source>
            <translation>Fortschrittsbericht</translation>
        </message>
        <message>
            <source>%1 hours</source>
            <translation>%1 Stunden</translation>
        </message>
        <message>
            <source>How many balls go in cannot be said yet (%1).</source>
            <translation>Wie viele Kugeln fallen, lässt sich noch nicht sagen (%1).</translation>
        </message>
        <message>
            <source>Whether anything changed cannot be said yet: that takes at least %1 with enough shots.</source>
            <translation>Ob sich etwas geändert hat, lässt sich noch nicht sagen: Dazu braucht es mindestens %1 mit genügend Stößen.</translation>
        </message>
        <message>
            <source>Over these weeks nothing changed by more than luck alone would bring about. That is usual for so short a time and no verdict on the practice.</source>
            <translation>In diesen Wochen hat sich nichts stärker geändert, als es der Zufall allein bewirkt. Das ist für eine so kurze Zeit üblich und kein Urteil über das Training.</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>Noch reicht es nicht, um zu sagen, woran zuerst zu arbeiten ist; jede weitere Sitzung hilft.</translation>
        </message>
        <message>
            <source>To work on first: %1. The drill is “%2”.</source>
            <translation>Zuerst zu üben: %1. Die Übung heißt „%2“.</translation>
        </message>
        <message>
            <source>What we can be sure of</source>
            <translation>Was sicher ist</translation>
        </message>
        <message>
            <source>Nothing stands out beyond luck in this period.</source>
            <translation>In diesem Zeitraum geht nichts über den Zufall hinaus.</translation>
        </message>
        <message>
            <source>Also looked at, and no more than luck: %1.</source>
            <translation>Ebenfalls geprüft und nicht mehr als Zufall: %1.</translation>
        </message>
        <message>
            <source>Not enough shots or sessions yet: %1.</source>
            <translation>Noch zu wenige Stöße oder Sitzungen: %1.</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>Woran zu arbeiten ist</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>Dieser Punkt und der nächste sind etwa gleichwertig; beginnen Sie, womit Sie wollen.</translation>
        </message>
        <message>
            <source>The order comes from a simple rule: the lines on which the balls ran are judged again with one cause taken away. Position, speed and choice of shot are not judged by it.</source>
            <translation>Die Reihenfolge folgt einer einfachen Regel: Die Linien, auf denen die Kugeln liefen, werden noch einmal ohne eine der Ursachen beurteilt. Stellung, Tempo und Wahl des Stoßes beurteilt sie nicht.</translation>
        </message>
        <message>
            <source>How far to trust this</source>
            <translation>Wie weit man dem trauen kann</translation>
        </message>
        <message>
            <source>Every one of these shots was corrected by a person; nothing rests on the camera alone.</source>
            <translation>Jeder dieser Stöße wurde von einem Menschen berichtigt; nichts beruht allein auf der Kamera.</translation>
        </message>
        <message>
            <source>The pocket was named by a person for %1 pots and read from the balls for %2; the two are not mixed.</source>
            <translation>Die Tasche wurde bei %1 Versuchen von einem Menschen genannt und bei %2 aus dem Lauf der Kugeln gelesen; beides wird nicht vermischt.</translation>
        </message>
        <message>
            <source>Left out: %1 on the table “%2”, whose pockets are of another width (%3 mm at the corners).</source>
            <translation>Nicht enthalten: %1 auf dem Tisch „%2“, dessen Taschen anders breit sind (%3 mm an den Ecken).</translation>
        </message>
        <message>
            <source>A clock went back during a session (%1); times within sessions are doubtful.</source>
            <translation>Während einer Sitzung ging eine Uhr zurück (%1); Zeiten innerhalb der Sitzungen sind zweifelhaft.</translation>
        </message>
        <message>
            <source>For %1 the time within the session is unknown.</source>
            <translation>Ohne bekannte Zeit innerhalb der Sitzung: %1.</translation>
        </message>
        <message>
            <source>The coach's note</source>
            <translation>Anmerkung der Trainerin oder des Trainers</translation>
        </message>
        <message>
            <source>Still waiting for a person's word: %1.</source>
            <translation>Es warten noch auf das Wort eines Menschen: %1.</translation>
        </message>
        <message>
            <source>Dated in the future: %1; set the clock of the camera or computer.</source>
            <translation>In der Zukunft datiert: %1; stellen Sie die Uhr der Kamera oder des Rechners.</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>Drill: %1. %2</source>
            <translation>Übung: %1. %2</translation>
        </message>
        <message>
            <source>The order is by frames won: the player's own shots are played again in the simulator, with one part of the scatter a fifth smaller. A simulation is a guide, not a promise.</source>
            <translation>Die Reihenfolge folgt gewonnenen Spielen: Die eigenen Stöße werden im Simulator noch einmal gespielt, mit einem Teil der Streuung um ein Fünftel kleiner. Eine Simulation ist ein Anhalt, kein Versprechen.</translation>
        </message>
        <message>
            <source>met</source>
            <translation>erreicht</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>noch nicht</translation>
        </message>
        <message>
            <source>not tried since</source>
            <translation>seither nicht versucht</translation>
        </message>
        <message>
            <source>%1; now %2</source>
            <comment>met or not yet, spread</comment>
            <translation>%1; jetzt %2</translation>
        </message>
        <message>
            <source>%1; since then %2 of %3 (between %4)</source>
            <comment>met or not yet, tries that met it, tries, interval</comment>
            <translation>%1; seither %2 von %3 (zwischen %4)</translation>
        </message>
        <message>
            <source>Targets of the time before</source>
            <translation>Ziele aus der Zeit davor</translation>
        </message>
        <message>
            <source>%1 of %2 at “%3”</source>
            <translation>%1 von %2 bei „%3“</translation>
        </message>
        <message>
            <source>scatter of %1 or less</source>
            <translation>Streuung von höchstens %1</translation>
        </message>
        <message>
            <source>The targets are those that a report on the first day of this period would have set.</source>
            <translation>Die Ziele sind die, die ein Bericht am ersten Tag dieses Zeitraums gesetzt hätte.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a count, its share</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Shots whose stroke was measured: %1. Not seen well enough: %2. Corrected by a person: %3.</source>
            <comment>each a count and its share</comment>
            <translation>Gemessene Stöße: %1. Nicht gut genug zu sehen: %2. Von einer Person berichtigt: %3.</translation>
        </message>
        <message>
            <source>Many shots were corrected by a person; look at the camera before the next session.</source>
            <translation>Viele Stöße wurden von einem Menschen berichtigt; sehen Sie vor der nächsten Sitzung nach der Kamera.</translation>
        </message>
        <message>
            <source>No consent is recorded for: %1.</source>
            <translation>Keine Einwilligung ist festgehalten für: %1.</translation>
        </message>
        <message>
            <source>What the record knew of consent on %1:</source>
            <translation>Was am %1 über Einwilligungen festgehalten war:</translation>
        </message>
        <message>
            <source>Of every 100 balls that were tried, about %1 went in. Luck and good and bad days allowed for, the true number very probably lies between %2 and %3.</source>
            <translation>Von je 100 versuchten Kugeln fielen etwa %1. Zufall und gute und schlechte Tage eingerechnet, liegt die wahre Zahl sehr wahrscheinlich zwischen %2 und %3.</translation>
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
            <translation>Stoß</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>Treffer</translation>
        </message>
        <message>
            <source>Foul</source>
            <translation>Foul</translation>
        </message>
        <message>
            <source>Worth</source>
            <comment>of a shot, in hundredths of a frame</comment>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Ziel</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>Side / height, R</source>
            <translation>Seite / Höhe, R</translation>
        </message>
        <message>
            <source>The suggestion had been shown before the shot.</source>
            <translation>Der Vorschlag war vor dem Stoß gezeigt worden.</translation>
        </message>
        <message>
            <source>Squirt</source>
            <translation>Abweichung (Squirt)</translation>
        </message>
        <message>
            <source>Swerve</source>
            <translation>Bogen (Swerve)</translation>
        </message>
        <message>
            <source>Throw of the cut</source>
            <translation>Mitnahme durch den Schnitt</translation>
        </message>
        <message>
            <source>Throw of the spin</source>
            <translation>Mitnahme durch Effet</translation>
        </message>
        <message>
            <source>Unexplained</source>
            <translation>Ungeklärt</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>Zusammen</translation>
        </message>
    </context>
    <context>
        <name>JudgementSentence</name>
        <message>
            <source>No game is known for this shot, so that no plan can be set beside it.</source>
            <translation>Für diesen Stoß ist kein Spiel bekannt, daher kann ihm kein Vorschlag gegenübergestellt werden.</translation>
        </message>
        <message>
            <source>The frame was over.</source>
            <translation>Das Spiel war zu Ende.</translation>
        </message>
        <message>
            <source>Where the cue ball lay before the shot is not known.</source>
            <translation>Wo die Weiße vor dem Stoß lag, ist nicht bekannt.</translation>
        </message>
        <message>
            <source>No legal shot was found from this position.</source>
            <translation>Aus dieser Lage wurde kein regelgerechter Stoß gefunden.</translation>
        </message>
        <message>
            <source>Suggested: %1. What was taken could not be matched to a plan.</source>
            <translation>Vorgeschlagen: %1. Das Gespielte ließ sich keinem Vorschlag zuordnen.</translation>
        </message>
        <message>
            <source>what came out was %1 in 100 better than the shot is worth</source>
            <translation>was herauskam, war um %1 von 100 besser, als der Stoß wert ist</translation>
        </message>
        <message>
            <source>delivery cost %1 in 100</source>
            <translation>die Ausführung kostete %1 von 100</translation>
        </message>
        <message>
            <source>The choice cost nothing that can be told</source>
            <translation>Die Wahl kostete nichts Erkennbares</translation>
        </message>
        <message>
            <source>The choice gained %1 in 100</source>
            <translation>Die Wahl brachte %1 von 100</translation>
        </message>
        <message>
            <source>The choice cost %1 in 100</source>
            <translation>Die Wahl kostete %1 von 100</translation>
        </message>
        <message>
            <source>%1; %2.</source>
            <comment>what the choice cost; what the delivery cost</comment>
            <translation>%1; %2.</translation>
        </message>
    </context>
    <context>
        <name>LiveWords</name>
        <message>
            <source>Waiting for the first image</source>
            <translation>Warten auf das erste Bild</translation>
        </message>
        <message>
            <source>What was seen is measured to its end</source>
            <translation>Was gesehen wurde, wird zu Ende gemessen</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand in the record</source>
            <translation>
                <numerusform>%n Stoß steht in der Aufzeichnung</numerusform>
                <numerusform>%n Stöße stehen in der Aufzeichnung</numerusform>
            </translation>
        </message>
        <message>
            <source>Practice without a referee</source>
            <translation>Training ohne Schiedsrichter</translation>
        </message>
        <message>
            <source>Waiting for the first shot</source>
            <translation>Warten auf den ersten Stoß</translation>
        </message>
        <message>
            <source>%1, as far as anyone knows</source>
            <comment>whose turn it is</comment>
            <translation>%1, soweit jemand weiß</translation>
        </message>
        <message>
            <source>Frames: %1 %2, %3 %4</source>
            <comment>name, frames, name, frames</comment>
            <translation>Spiele: %1 %2, %3 %4</translation>
        </message>
        <message>
            <source>%1 images</source>
            <comment>a number that grows</comment>
            <translation>%1 Bilder</translation>
        </message>
        <message>
            <source>none dropped</source>
            <translation>keines ausgelassen</translation>
        </message>
        <message numerus="yes">
            <source>%n dropped</source>
            <translation>
                <numerusform>%n ausgelassen</numerusform>
                <numerusform>%n ausgelassen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the picture is %n image(s) behind</source>
            <translation>
                <numerusform>das Bild liegt %n Bild zurück</numerusform>
                <numerusform>das Bild liegt %n Bilder zurück</numerusform>
            </translation>
        </message>
        <message>
            <source>The picture is too dark: put more light on the table, or let the camera expose longer.</source>
            <translation>Das Bild ist zu dunkel: mehr Licht auf den Tisch geben oder die Kamera länger belichten lassen.</translation>
        </message>
        <message>
            <source>Part of the picture is burnt out: dim the lamps, or let the camera expose for a shorter time.</source>
            <translation>Ein Teil des Bildes ist überbelichtet: die Lampen dimmen oder die Kamera kürzer belichten lassen.</translation>
        </message>
        <message>
            <source>Fast balls become streaks: the camera exposes about %1 ms; with more light it can be shorter.</source>
            <translation>Schnelle Kugeln werden zu Streifen: Die Kamera belichtet etwa %1 ms; mit mehr Licht geht es kürzer.</translation>
        </message>
        <message>
            <source>Rig not checked at %1: %2</source>
            <comment>time, why</comment>
            <translation>Kamerastandort bei %1 nicht geprüft: %2</translation>
        </message>
        <message>
            <source>Rig checked at %1: it fits.</source>
            <translation>Kamerastandort bei %1 geprüft: er passt.</translation>
        </message>
        <message>
            <source>Rig checked at %1: %2</source>
            <comment>time, what is wrong</comment>
            <translation>Kamerastandort bei %1 geprüft: %2</translation>
        </message>
    </context>
    <context>
        <name>MarkWords</name>
        <message>
            <source>the %1 pocket</source>
            <comment>a pocket's place</comment>
            <translation>die Tasche %1</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the left rail, from the head</source>
            <translation>Diamant %1 von %2 auf dem linken Rahmen, vom Kopf aus</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the right rail, from the head</source>
            <translation>Diamant %1 von %2 auf dem rechten Rahmen, vom Kopf aus</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the foot rail, from the left</source>
            <translation>Diamant %1 von %2 auf dem Rahmen am Fuß, von links</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the head rail, from the left</source>
            <translation>Diamant %1 von %2 auf dem Rahmen am Kopf, von links</translation>
        </message>
    </context>
    <context>
        <name>MeasuringWords</name>
        <message>
            <source>aim %1</source>
            <translation>Ziel %1</translation>
        </message>
        <message>
            <source>aim and speed not observable</source>
            <translation>Ziel und Tempo nicht erkennbar</translation>
        </message>
        <message>
            <source>less than a minute left</source>
            <translation>noch weniger als eine Minute</translation>
        </message>
        <message numerus="yes">
            <source>about %n minute(s) left</source>
            <translation>
                <numerusform>noch etwa %n Minute</numerusform>
                <numerusform>noch etwa %n Minuten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>about %n hour(s) left</source>
            <translation>
                <numerusform>noch etwa %n Stunde</numerusform>
                <numerusform>noch etwa %n Stunden</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one</source>
            <translation>Zu jedem Stoß wird der Vorschlag gesucht</translation>
        </message>
        <message>
            <source>Opening the film</source>
            <translation>Der Film wird geöffnet</translation>
        </message>
        <message>
            <source>Image %1</source>
            <translation>Bild %1</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>how far, time left</comment>
            <translation>%1; %2</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) measured in %1 of film.</source>
            <translation>
                <numerusform>%n Stoß in %1 Film gemessen.</numerusform>
                <numerusform>%n Stöße in %1 Film gemessen.</numerusform>
            </translation>
        </message>
        <message>
            <source>The film is shorter than its header says; what is there counts.</source>
            <translation>Der Film ist kürzer, als sein Kopf angibt; was da ist, zählt.</translation>
        </message>
        <message numerus="yes">
            <source>The camera moved %n time(s): shots during a move are doubtful.</source>
            <translation>
                <numerusform>Die Kamera hat sich %n-mal bewegt: Stöße währenddessen sind zweifelhaft.</numerusform>
                <numerusform>Die Kamera hat sich %n-mal bewegt: Stöße währenddessen sind zweifelhaft.</numerusform>
            </translation>
        </message>
        <message>
            <source>Read with what session "%1" told of this table.</source>
            <translation>Gelesen mit dem, was die Sitzung „%1“ über diesen Tisch verriet.</translation>
        </message>
        <message>
            <source>It stands beside session "%1", which holds the same film.</source>
            <translation>Sie steht neben der Sitzung „%1“, die denselben Film enthält.</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand beside what would have been suggested.</source>
            <translation>
                <numerusform>Neben %n Stoß steht nun, was vorgeschlagen worden wäre.</numerusform>
                <numerusform>Neben %n Stößen steht nun, was vorgeschlagen worden wäre.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Stopped. %n shot(s) stand in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</source>
            <translation>
                <numerusform>Angehalten. %n Stoß steht in der Sitzung „%1“, deren Spiel als unvollständig gilt; der Film kann jederzeit noch einmal von vorn gemessen werden.</numerusform>
                <numerusform>Angehalten. %n Stöße stehen in der Sitzung „%1“, deren Spiel als unvollständig gilt; der Film kann jederzeit noch einmal von vorn gemessen werden.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>This film was measured before: session "%1" holds its %n shot(s).</source>
            <translation>
                <numerusform>Dieser Film wurde schon gemessen: Die Sitzung „%1“ enthält seinen %n Stoß.</numerusform>
                <numerusform>Dieser Film wurde schon gemessen: Die Sitzung „%1“ enthält seine %n Stöße.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Measuring this film was broken off: session "%1" holds its first %n shot(s). Measured again, it becomes a session of its own beside that one.</source>
            <translation>
                <numerusform>Das Messen dieses Films wurde abgebrochen: Die Sitzung „%1“ enthält seinen ersten Stoß (%n). Noch einmal gemessen, wird er eine eigene Sitzung neben dieser.</numerusform>
                <numerusform>Das Messen dieses Films wurde abgebrochen: Die Sitzung „%1“ enthält seine ersten %n Stöße. Noch einmal gemessen, wird er eine eigene Sitzung neben dieser.</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one, %1</source>
            <comment>share</comment>
            <translation>Zu jedem Stoß wird ein Vorschlag gesucht, %1</translation>
        </message>
        <message>
            <source>Checking that film and rig belong together</source>
            <translation>Es wird geprüft, ob Film und Kamerastandort zusammengehören</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by up to %1 mm.</source>
            <translation>So liegt der Ort einer Kugel um bis zu %1 mm daneben.</translation>
        </message>
    </context>
    <context>
        <name>MergeSentence</name>
        <message>
            <source>Nothing of it was new.</source>
            <translation>Nichts davon war neu.</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s)</source>
            <translation>
                <numerusform>%n Spieler</numerusform>
                <numerusform>%n Spieler</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n Sitzung</numerusform>
                <numerusform>%n Sitzungen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n Stoß</numerusform>
                <numerusform>%n Stöße</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n drill run(s)</source>
            <translation>
                <numerusform>%n Übungsdurchgang</numerusform>
                <numerusform>%n Übungsdurchgänge</numerusform>
            </translation>
        </message>
        <message>
            <source>New: %1.</source>
            <comment>a list of counts</comment>
            <translation>Neu: %1.</translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) had been corrected or gone on with there and are now as there.</source>
            <translation>
                <numerusform>%n Spiel war dort korrigiert oder fortgesetzt worden und ist jetzt wie dort.</numerusform>
                <numerusform>%n Spiele waren dort korrigiert oder fortgesetzt worden und sind jetzt wie dort.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) were changed in both records and stay as they are here.</source>
            <translation>
                <numerusform>%n Spiel wurde in beiden Aufzeichnungen geändert und bleibt, wie es hier ist.</numerusform>
                <numerusform>%n Spiele wurden in beiden Aufzeichnungen geändert und bleiben, wie sie hier sind.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of the other record is called %2 here; if both are one person, join them in Players.</source>
            <translation>%1 der anderen Aufzeichnung heißt hier %2; sind beide dieselbe Person, führen Sie sie in Spieler zusammen.</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s) who were erased here were left out.</source>
            <translation>
                <numerusform>%n Spieler, der hier gelöscht wurde, blieb draußen.</numerusform>
                <numerusform>%n Spieler, die hier gelöscht wurden, blieben draußen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Erased there, and still here: %1.</source>
            <translation>Dort gelöscht, hier noch da: %1.</translation>
        </message>
    </context>
    <context>
        <name>MissSentence</name>
        <message>
            <source>Missed %1 by %2 (%3 at the pocket).</source>
            <translation>%1 verfehlt um %2 (%3 an der Tasche).</translation>
        </message>
        <message>
            <source>The line was %1 off the middle of the pocket.</source>
            <translation>Die Linie lag %1 neben der Taschenmitte.</translation>
        </message>
        <message>
            <source>It rattled in the jaws.</source>
            <translation>Die Kugel klapperte in den Backen.</translation>
        </message>
        <message>
            <source>the aim was %1 %2 of the ghost ball</source>
            <translation>das Zielen lag %1 %2 neben der Geisterkugel</translation>
        </message>
        <message>
            <source>squirt made it %1 %2</source>
            <translation>Squirt machte es %1 %2</translation>
        </message>
        <message>
            <source>swerve made it %1 %2</source>
            <translation>der Bogen machte es %1 %2</translation>
        </message>
        <message>
            <source>throw of the cut made it %1 %2</source>
            <translation>die Mitnahme durch den Schnitt machte es %1 %2</translation>
        </message>
        <message>
            <source>throw of the side spin made it %1 %2</source>
            <translation>die Mitnahme durch den Effet machte es %1 %2</translation>
        </message>
        <message>
            <source>the speed made it %1 %2</source>
            <translation>das Tempo machte es %1 %2</translation>
        </message>
        <message>
            <source>%1 %2 stays unexplained</source>
            <translation>%1 %2 bleiben ungeklärt</translation>
        </message>
        <message>
            <source>The film does not tell what brought it there.</source>
            <translation>Der Film sagt nicht, was dazu führte.</translation>
        </message>
        <message>
            <source>the cue ball was not seen for long enough</source>
            <translation>die Weiße war nicht lange genug zu sehen</translation>
        </message>
        <message>
            <source>no stroke that can be simulated goes this way</source>
            <translation>kein simulierbarer Stoß läuft so</translation>
        </message>
        <message>
            <source>no cushion, no curve: side spin cannot be seen</source>
            <translation>keine Bande, kein Bogen: Seiteneffet ist nicht zu sehen</translation>
        </message>
        <message>
            <source>side spin did too little to be seen</source>
            <translation>der Seiteneffet bewirkte zu wenig, um ihn zu sehen</translation>
        </message>
        <message>
            <source>the slide was too short to tell the height of the tip</source>
            <translation>das Gleiten war zu kurz, um die Höhe des Stoßpunkts zu zeigen</translation>
        </message>
        <message>
            <source>no hop, no curve: the cue's elevation cannot be seen</source>
            <translation>kein Sprung, kein Bogen: die Neigung des Queues ist nicht zu sehen</translation>
        </message>
        <message>
            <source>the film begins with balls in motion</source>
            <translation>der Film beginnt mit Kugeln in Bewegung</translation>
        </message>
        <message>
            <source>the film ends before every ball rests</source>
            <translation>der Film endet, bevor alle Kugeln liegen</translation>
        </message>
        <message>
            <source>the next strike came before every ball rested</source>
            <translation>der nächste Stoß kam, bevor alle Kugeln lagen</translation>
        </message>
        <message>
            <source>a ball was taken up during the shot</source>
            <translation>während des Stoßes wurde eine Kugel aufgenommen</translation>
        </message>
        <message>
            <source>a ball moved that nothing hit</source>
            <translation>eine Kugel bewegte sich, ohne getroffen zu sein</translation>
        </message>
        <message>
            <source>balls may have been taken for each other</source>
            <translation>Kugeln könnten verwechselt worden sein</translation>
        </message>
        <message>
            <source>a moving ball was lost from view</source>
            <translation>eine laufende Kugel ging außer Sicht</translation>
        </message>
        <message>
            <source>two balls were hit too close together to tell which came first</source>
            <translation>zwei Kugeln wurden zu dicht nacheinander getroffen, um die erste zu nennen</translation>
        </message>
        <message>
            <source>a ball was lost on its way to a pocket</source>
            <translation>eine Kugel ging auf dem Weg zur Tasche verloren</translation>
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
            <translation>ein Elternteil oder Vormund</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>jemand</translation>
        </message>
        <message>
            <source>%1 (parent or guardian)</source>
            <translation>%1 (Elternteil oder Vormund)</translation>
        </message>
        <message>
            <source>Ask before shots of this person are measured and kept.</source>
            <translation>Fragen, bevor Stöße dieser Person gemessen und behalten werden.</translation>
        </message>
        <message>
            <source>No film is kept of this person.</source>
            <translation>Von dieser Person wird kein Film behalten.</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Nicht bekannt</translation>
        </message>
        <message>
            <source>Right-handed</source>
            <translation>Rechtshänder</translation>
        </message>
        <message>
            <source>Left-handed</source>
            <translation>Linkshänder</translation>
        </message>
        <message>
            <source>Both hands</source>
            <translation>Beide Hände</translation>
        </message>
        <message>
            <source>Measured shots</source>
            <translation>Gemessene Stöße</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Film</translation>
        </message>
        <message>
            <source>Film of a minor</source>
            <translation>Film eines Minderjährigen</translation>
        </message>
        <message>
            <source>Handing on the report</source>
            <translation>Weitergabe des Berichts</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until %3.</source>
            <translation>Gegeben von %1 am %2, bis %3.</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until it is withdrawn.</source>
            <translation>Gegeben von %1 am %2, bis auf Widerruf.</translation>
        </message>
        <message>
            <source>Missing.</source>
            <translation>Fehlt.</translation>
        </message>
        <message>
            <source>Given by %1 on %2, but for a minor a parent or guardian must give it.</source>
            <translation>Gegeben von %1 am %2, doch bei Minderjährigen muss ein Elternteil oder Vormund sie geben.</translation>
        </message>
        <message>
            <source>Expired on %1.</source>
            <translation>Abgelaufen am %1.</translation>
        </message>
        <message>
            <source>Withdrawn by %1 on %2.</source>
            <translation>Widerrufen von %1 am %2.</translation>
        </message>
        <message>
            <source>%1 · %2: withdrawn by %3</source>
            <translation>%1 · %2: widerrufen von %3</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3 until %4</source>
            <translation>%1 · %2: gegeben von %3 bis %4</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3</source>
            <translation>%1 · %2: gegeben von %3</translation>
        </message>
        <message>
            <source>, noted by %1</source>
            <translation>, vermerkt von %1</translation>
        </message>
        <message>
            <source>, taken back as a mistake</source>
            <translation>, als Irrtum zurückgenommen</translation>
        </message>
        <message>
            <source>guest</source>
            <translation>Gast</translation>
        </message>
        <message>
            <source>no consent</source>
            <translation>keine Einwilligung</translation>
        </message>
        <message>
            <source>no film</source>
            <translation>kein Film</translation>
        </message>
        <message>
            <source>Has not played yet.</source>
            <translation>Hat noch nicht gespielt.</translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n Sitzung</numerusform>
                <numerusform>%n Sitzungen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n Stoß</numerusform>
                <numerusform>%n Stöße</numerusform>
            </translation>
        </message>
        <message>
            <source>last played on %1</source>
            <translation>zuletzt gespielt am %1</translation>
        </message>
        <message>
            <source>The report goes to nobody but this person and, for a minor, a parent or guardian.</source>
            <translation>Der Bericht geht nur an diese Person und bei Minderjährigen an einen Elternteil oder Vormund.</translation>
        </message>
    </context>
    <context>
        <name>PlaceHelp</name>
        <message>
            <source>Go through the steps from the first; you can leave and come back at any time.</source>
            <translation>Gehen Sie die Schritte der Reihe nach durch; Sie können jederzeit weggehen und wiederkommen.</translation>
        </message>
        <message>
            <source>Measure the table with a steel rule, nose to nose; equal diagonals mean that it is square.</source>
            <translation>Messen Sie den Tisch mit einem Stahlmaß von Bandennase zu Bandennase; gleiche Diagonalen heißen, dass er rechtwinklig ist.</translation>
        </message>
        <message>
            <source>Print the board at its true size, check its ruler, and take at least ten sharp stills that reach every corner of the image.</source>
            <translation>Drucken Sie die Tafel in wahrer Größe, prüfen Sie ihr Lineal, und nehmen Sie mindestens zehn scharfe Standbilder auf, die jede Ecke des Bildes erreichen.</translation>
        </message>
        <message>
            <source>Measure where the tags lie and how high they stand: one centimetre of height is worth millimetres at the balls.</source>
            <translation>Messen Sie, wo die Marken liegen und wie hoch sie stehen: Ein Zentimeter Höhe ist an den Kugeln Millimeter wert.</translation>
        </message>
        <message>
            <source>Ask the self-check whether lens and rig fit the film, and the error map how far a ball may be off.</source>
            <translation>Fragen Sie die Selbstprüfung, ob Objektiv und Kamerastandort zum Film passen, und die Fehlerkarte, wie weit eine Kugel daneben liegen kann.</translation>
        </message>
        <message>
            <source>Begin with the game and who plays, or with practice alone.</source>
            <translation>Beginnen Sie mit dem Spiel und den Spielern, oder mit Training allein.</translation>
        </message>
        <message>
            <source>Drag the balls to where they lie; they are drawn to spots, cushions and other balls.</source>
            <translation>Ziehen Sie die Kugeln dorthin, wo sie liegen; Punkte, Banden und andere Kugeln ziehen sie an.</translation>
        </message>
        <message>
            <source>Click the ball and the pocket that are played for, then press the key of what happened.</source>
            <translation>Klicken Sie Kugel und Tasche an, auf die gespielt wird, und drücken Sie dann die Taste für das, was geschah.</translation>
        </message>
        <message>
            <source>The referee keeps turn and score; undo takes back any step.</source>
            <translation>Der Schiedsrichter führt Aufnahme und Stand; Rückgängig nimmt jeden Schritt zurück.</translation>
        </message>
        <message>
            <source>Ask for a suggestion only when you want one: that it was shown is kept with the shot.</source>
            <translation>Fragen Sie nur nach einem Vorschlag, wenn Sie einen wollen: Dass er gezeigt wurde, wird beim Stoß vermerkt.</translation>
        </message>
        <message>
            <source>Choose a shot on the left, or scrub along the time line.</source>
            <translation>Wählen Sie links einen Stoß, oder fahren Sie die Zeitleiste entlang.</translation>
        </message>
        <message>
            <source>Step by image, by event or by shot; film and plan always show the same moment.</source>
            <translation>Gehen Sie bild-, ereignis- oder stoßweise; Film und Draufsicht zeigen immer denselben Augenblick.</translation>
        </message>
        <message>
            <source>Suggested is dashed, taken is solid; the panel on the right sets both side by side.</source>
            <translation>Vorgeschlagenes ist gestrichelt, Gespieltes durchgezogen; rechts steht beides nebeneinander.</translation>
        </message>
        <message>
            <source>Each number stands with its standard uncertainty; what the film cannot show is called not observable.</source>
            <translation>Jede Zahl steht mit ihrer Standardunsicherheit; was der Film nicht zeigen kann, heißt nicht beobachtbar.</translation>
        </message>
        <message>
            <source>Filter the shots to play, say, all thick misses one after another.</source>
            <translation>Filtern Sie die Stöße, um etwa alle zu dicken Fehlstöße hintereinander abzuspielen.</translation>
        </message>
        <message>
            <source>Choose a player and a period; a second column compares another period or player.</source>
            <translation>Wählen Sie Spieler und Zeitraum; eine zweite Spalte vergleicht mit einem anderen.</translation>
        </message>
        <message>
            <source>Bands and whiskers are 95 % intervals; a change within them may be chance.</source>
            <translation>Bänder und Striche sind 95-%-Intervalle; eine Änderung darin kann Zufall sein.</translation>
        </message>
        <message>
            <source>Click a point or a cell to look at the shots behind it.</source>
            <translation>Klicken Sie einen Punkt oder ein Feld an, um die Stöße dahinter anzusehen.</translation>
        </message>
        <message>
            <source>What to work on names three things at most, with what each is worth in frames.</source>
            <translation>„Woran arbeiten“ nennt höchstens drei Dinge, und was jedes an Partien wert ist.</translation>
        </message>
        <message>
            <source>Choose the student, the period and the student's own language.</source>
            <translation>Wählen Sie Schüler, Zeitraum und die Sprache des Schülers.</translation>
        </message>
        <message>
            <source>Write a note of your own: it stands on the first page.</source>
            <translation>Schreiben Sie ein eigenes Wort: Es steht auf der ersten Seite.</translation>
        </message>
        <message>
            <source>The sheets on the screen are the ones that print; export them as PDF or HTML.</source>
            <translation>Die Blätter auf dem Bildschirm sind die, die gedruckt werden; geben Sie sie als PDF oder HTML aus.</translation>
        </message>
        <message>
            <source>Put right what was read wrongly with one key, or from the right button's menu; what follows is read and ruled again.</source>
            <translation>Stellen Sie mit einer Taste oder im Menü der rechten Maustaste richtig, was falsch gelesen wurde; was daraus folgt, wird neu gelesen und entschieden.</translation>
        </message>
        <message>
            <source>Choose a drill on the left; point at a ball to see how its place is measured.</source>
            <translation>Links eine Übung wählen; auf eine Kugel zeigen, um zu sehen, wie ihr Platz ausgemessen wird.</translation>
        </message>
        <message>
            <source>Every drill has mirror images: what is easy to one side may be hard to the other.</source>
            <translation>Jede Übung hat Spiegelbilder: Was zur einen Seite leicht ist, kann zur anderen schwer sein.</translation>
        </message>
        <message>
            <source>Begin a run, click where the cue ball came to rest, and press the key of what happened.</source>
            <translation>Einen Durchgang beginnen, dorthin klicken, wo die Weiße liegen blieb, und die Taste für das Geschehene drücken.</translation>
        </message>
        <message>
            <source>Or let the tries be counted from a session that was recorded.</source>
            <translation>Oder die Versuche aus einer aufgezeichneten Sitzung zählen lassen.</translation>
        </message>
        <message>
            <source>The history says whether the last run differs from those before by more than chance.</source>
            <translation>Der Verlauf sagt, ob der letzte Durchgang mehr als zufällig von den früheren abweicht.</translation>
        </message>
        <message>
            <source>Add the players first: name, playing hand, groups such as juniors or Tuesday.</source>
            <translation>Zuerst die Spieler hinzufügen: Name, Spielhand, Gruppen wie Jugend oder Dienstag.</translation>
        </message>
        <message>
            <source>Note who consented to what, when and until when; for a minor a parent or guardian does.</source>
            <translation>Vermerken, wer worin, wann und bis wann eingewilligt hat; bei Minderjährigen ein Elternteil oder Vormund.</translation>
        </message>
        <message>
            <source>What is missing or has expired is said in words, with what follows: without consent no film is kept.</source>
            <translation>Was fehlt oder abgelaufen ist, steht in Worten da, mit den Folgen: Ohne Einwilligung wird kein Film behalten.</translation>
        </message>
        <message>
            <source>Nothing leaves the list of consents: withdrawal, renewal and mistakes are lines of their own.</source>
            <translation>Aus der Liste der Einwilligungen verschwindet nichts: Widerruf, Erneuerung und Irrtum sind eigene Zeilen.</translation>
        </message>
        <message>
            <source>A guest's shots can be given to a player once it is known who it was.</source>
            <translation>Die Stöße eines Gastes können einem Spieler gegeben werden, sobald bekannt ist, wer es war.</translation>
        </message>
        <message>
            <source>From a film or live, what the referee cannot see is asked on the right: press the number of the answer.</source>
            <translation>Aus einem Film oder live wird rechts gefragt, was der Schiedsrichter nicht sehen kann: Drücken Sie die Nummer der Antwort.</translation>
        </message>
        <message>
            <source>A live session can keep its film beside the record, of people whose consent is noted in Players.</source>
            <translation>Eine Live-Sitzung kann ihren Film neben der Aufzeichnung behalten, von Personen, deren Einwilligung in Spieler vermerkt ist.</translation>
        </message>
        <message>
            <source>Once Set-up has made a rig, the camera says how far each ball is from its place.</source>
            <translation>Hat die Einrichtung einen Standort bestimmt, sagt die Kamera, wie weit jede Kugel von ihrem Platz liegt.</translation>
        </message>
        <message>
            <source>Hold a shot to set another one beside it, with what differs below.</source>
            <translation>Einen Stoß festhalten und einen anderen danebenstellen; darunter steht, worin sie sich unterscheiden.</translation>
        </message>
        <message>
            <source>Save what you see as a picture, or the shot as a short film; a film of people is written only with their consent, the plan always.</source>
            <translation>Was Sie sehen, als Bild speichern, oder den Stoß als kurzen Film; ein Film von Menschen wird nur mit ihrer Einwilligung geschrieben, die Draufsicht immer.</translation>
        </message>
        <message>
            <source>Without tags and board the cushions serve; the error map then says what they cost. A cushion that was missed or mistaken is placed by hand under a loupe, in the step Rig.</source>
            <translation>Ohne Marken und Tafel genügen die Banden; die Fehlerkarte sagt dann, was das kostet. Eine Bande, die fehlt oder verwechselt ist, wird im Schritt Kamerastandort unter einer Lupe von Hand gesetzt.</translation>
        </message>
        <message>
            <source>Every edit can be undone, and brings back what it had made void, the rig included.</source>
            <translation>Jede Änderung lässt sich rückgängig machen und bringt zurück, was durch sie ungültig wurde, auch den Kamerastandort.</translation>
        </message>
        <message>
            <source>The rig is checked against the film before it is measured, and every five minutes of live play; check the rig again at any moment by its key.</source>
            <translation>Der Kamerastandort wird gegen den Film geprüft, bevor gemessen wird, und live alle fünf Minuten; mit seiner Taste lässt er sich jederzeit wieder prüfen.</translation>
        </message>
        <message>
            <source>With a projector the suggestion, or where balls must be put back, lies on the cloth. A live session makes it black while somebody leans over the table.</source>
            <translation>Mit einem Projektor liegt der Vorschlag auf dem Tuch, oder wohin Kugeln zurückgelegt werden müssen. Eine Live-Sitzung macht ihn schwarz, solange sich jemand über den Tisch beugt.</translation>
        </message>
        <message>
            <source>With a projector the set-up can lie on the cloth; never look into the beam.</source>
            <translation>Mit einem Projektor kann die Aufstellung auf dem Tuch liegen; nie in den Strahl sehen.</translation>
        </message>
    </context>
    <context>
        <name>Places</name>
        <message>
            <source>Review</source>
            <translation>Rückblick</translation>
        </message>
        <message>
            <source>Look at measured shots, film and plan together</source>
            <translation>Gemessene Stöße ansehen, Film und Draufsicht zusammen</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>Sitzung</translation>
        </message>
        <message>
            <source>Put in what is played, shot by shot</source>
            <translation>Eingeben, was gespielt wird, Stoß für Stoß</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>See how a player's aim, speed and makes hold up</source>
            <translation>Sehen, wie sich Zielen, Tempo und Treffer eines Spielers entwickeln</translation>
        </message>
        <message>
            <source>Reports</source>
            <translation>Berichte</translation>
        </message>
        <message>
            <source>Make the progress report that a student takes home</source>
            <translation>Den Bericht machen, den ein Schüler mit nach Hause nimmt</translation>
        </message>
        <message>
            <source>Set-up</source>
            <translation>Einrichtung</translation>
        </message>
        <message>
            <source>Set up table, lens and rig, and see how far to trust them</source>
            <translation>Tisch, Objektiv und Kamerastandort einrichten und sehen, wie weit ihnen zu trauen ist</translation>
        </message>
        <message>
            <source>Drills</source>
            <translation>Übungen</translation>
        </message>
        <message>
            <source>Set up a drill, repeat it, and see the scatter shrink</source>
            <translation>Eine Übung aufbauen, wiederholen und sehen, wie die Streuung schrumpft</translation>
        </message>
        <message>
            <source>Players</source>
            <translation>Spieler</translation>
        </message>
        <message>
            <source>Who plays: groups, consent, notes, and what is kept of each</source>
            <translation>Wer spielt: Gruppen, Einwilligung, Notizen, und was von jedem behalten wird</translation>
        </message>
    </context>
    <context>
        <name>PlanSentence</name>
        <message>
            <source>leaves the opponent an open pot %1 times in 10</source>
            <translation>lässt dem Gegner in %1 von 10 Fällen einen offenen Stoß</translation>
        </message>
        <message>
            <source>pot %1</source>
            <translation>Treffer %1</translation>
        </message>
        <message>
            <source>pot %1 against %2</source>
            <translation>Treffer %1 gegen %2</translation>
        </message>
        <message>
            <source>the leave gives %1 a shot %2 times in 10</source>
            <translation>danach ist %1 in %2 von 10 Fällen spielbar</translation>
        </message>
        <message>
            <source>foul %1</source>
            <translation>Foul %1</translation>
        </message>
        <message>
            <source>as good as %1</source>
            <translation>so gut wie %1</translation>
        </message>
        <message>
            <source>better than %1</source>
            <translation>besser als %1</translation>
        </message>
        <message>
            <source>behind %1</source>
            <translation>hinter %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>%1 nach %2</translation>
        </message>
        <message>
            <source>%1 into %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>%1 in die %2 nach %3</translation>
        </message>
        <message>
            <source>off %1 onto %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>von der %1 auf die %2 nach %3</translation>
        </message>
        <message>
            <source>bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>%1 über Bande nach %2</translation>
        </message>
        <message>
            <source>two-cushion bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>%1 über zwei Banden nach %2</translation>
        </message>
        <message>
            <source>kick at %1</source>
            <comment>a ball</comment>
            <translation>über Bande an die %1</translation>
        </message>
        <message>
            <source>two-cushion kick at %1</source>
            <comment>a ball</comment>
            <translation>über zwei Banden an die %1</translation>
        </message>
        <message>
            <source>safety off %1</source>
            <comment>a ball</comment>
            <translation>Sicherheit an der %1</translation>
        </message>
        <message>
            <source>break</source>
            <translation>Anstoß</translation>
        </message>
        <message>
            <source>%1 was the right shot.</source>
            <translation>%1 war der richtige Stoß.</translation>
        </message>
        <message>
            <source>%1 was the right ball, but another speed or spin was better: %2.</source>
            <translation>%1 war die richtige Kugel, aber anderes Tempo oder anderer Effet war besser: %2.</translation>
        </message>
        <message>
            <source>%1 is as good as %2: %3.</source>
            <translation>%1 ist so gut wie %2: %3.</translation>
        </message>
        <message>
            <source>%1 was better than %2.</source>
            <translation>%1 war besser als %2.</translation>
        </message>
        <message>
            <source>%1 was better than %2: %3.</source>
            <translation>%1 war besser als %2: %3.</translation>
        </message>
    </context>
    <context>
        <name>PlayCharts</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>value, least, most</comment>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>Anstoß: eine Kugel und kein Foul</translation>
        </message>
        <message>
            <source>break: fouls</source>
            <translation>Anstoß: Fouls</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>Anstoß: Kugeln</translation>
        </message>
        <message>
            <source>break: cue ball from the middle</source>
            <translation>Anstoß: Weiße von der Mitte</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>Kugeln je Aufnahme</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>gewonnene Spiele in einer Aufnahme</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>Fouls, von allen Stößen</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>verfehlte leichte Kugeln, von allen leichten</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>Zeit für einen Stoß</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>Das Spiel</translation>
        </message>
        <message>
            <source>With the number counted; lines and brackets: 95 % interval.</source>
            <translation>Mit der Anzahl; Linien und Klammern: 95-%-Intervall.</translation>
        </message>
        <message>
            <source>left no direct shot</source>
            <translation>ließ keinen direkten Stoß</translation>
        </message>
        <message>
            <source>next player: made a ball</source>
            <translation>nächster Spieler: lochte</translation>
        </message>
        <message>
            <source>next player: missed</source>
            <translation>nächster Spieler: verfehlte</translation>
        </message>
        <message>
            <source>next player: safety</source>
            <translation>nächster Spieler: Sicherheit</translation>
        </message>
        <message>
            <source>next player: foul</source>
            <translation>nächster Spieler: Foul</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>Sicherheitsstöße und was danach kam</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>auf der falschen Seite der nächsten Kugel</translation>
        </message>
        <message>
            <source>cost on the right side</source>
            <translation>Kosten auf der richtigen Seite</translation>
        </message>
        <message>
            <source>cost on the wrong side</source>
            <translation>Kosten auf der falschen Seite</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>länger (+) oder kürzer als gemeint</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>Stellung zur nächsten Kugel</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan that was taken. Cost: of the frame's chance. Lines and brackets: 95 % interval.</source>
            <translation>Gelochte Kugeln, gegen den gespielten Plan. Kosten: von der Gewinnchance. Linien und Klammern: 95-%-Intervall.</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Wahl und Ausführung</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>gut ausgeführt</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>schlecht ausgeführt</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>gute Wahl</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>schwache Wahl</translation>
        </message>
        <message>
            <source>Shots in each box and the 95 % interval of their share. Ties count as good; shots after a suggestion was shown are left out.</source>
            <translation>Stöße in jedem Feld und das 95-%-Intervall ihres Anteils. Gleichstände zählen als gut; Stöße nach einem gezeigten Vorschlag bleiben außer Betracht.</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>Chancen, wie genannt und wie eingetroffen</translation>
        </message>
        <message>
            <source>stated %1, fell %2 (%3), %4</source>
            <comment>chance, share, interval, number of shots</comment>
            <translation>genannt %1, gefallen %2 (%3), %4</translation>
        </message>
        <message>
            <source>Across: the chance that the plan was given, up: the share that fell, with its 95 % interval. On the dashed line both agree. Hollow: fewer than 10.</source>
            <translation>Waagrecht: die genannte Chance, senkrecht: der Anteil, der fiel, mit seinem 95-%-Intervall. Auf der gestrichelten Linie stimmen beide überein. Hohl: weniger als 10.</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>Aufnahmen je Spiel</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>Zeit vor einer gelochten Kugel</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>Zeit vor einem Fehlstoß</translation>
        </message>
        <message>
            <source>No direct shot: the planner found none for the next player. Lines: 95 % interval.</source>
            <translation>Kein direkter Stoß: Die Planung fand für den nächsten Spieler keinen. Linien: 95-%-Intervall.</translation>
        </message>
    </context>
    <context>
        <name>PrintSheets</name>
        <message>
            <source>Calibration board %1</source>
            <translation>Kalibriertafel %1</translation>
        </message>
        <message>
            <source>Tags for the rails</source>
            <translation>Marken für den Tischrahmen</translation>
        </message>
        <message>
            <source>Tag %1: black side %2 mm; cut along the dashes, top is up</source>
            <translation>Marke %1: schwarze Seite %2 mm; an den Strichen schneiden, oben ist oben</translation>
        </message>
        <message>
            <source>Print at 100 %, not fitted to the page. Both lines must measure 100 mm with a steel rule; if not, tell the program what they measure.</source>
            <translation>Mit 100 % drucken, nicht an die Seite angepasst. Beide Linien müssen mit dem Stahlmaß 100 mm messen; wenn nicht, die gemessene Länge eingeben.</translation>
        </message>
    </context>
    <context>
        <name>ProgressWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>seit %1</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>Training</translation>
        </message>
        <message>
            <source>matches</source>
            <translation>Wettkämpfe</translation>
        </message>
        <message>
            <source>lessons</source>
            <translation>Unterricht</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>Es reicht noch nicht, um zu sagen, woran zuerst zu arbeiten ist; jede weitere Sitzung hilft.</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>Übung: %1</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>Dieser Punkt und der nächste sind etwa gleich; beginnen Sie mit einem von beiden.</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection.</source>
            <translation>In dieser Auswahl gibt es keinen Stoß dieses Spielers.</translation>
        </message>
        <message>
            <source>pots tried: %1</source>
            <translation>versuchte Kugeln: %1</translation>
        </message>
        <message>
            <source>Not tracked: %1. Changed by a person: %2. Waiting for a person: %3.</source>
            <translation>Nicht verfolgt: %1. Von einer Person geändert: %2. Wartet auf eine Person: %3.</translation>
        </message>
        <message>
            <source>Pocket named by a person: %1 of %2; never mixed with pockets read from the balls.</source>
            <translation>Tasche von einem Menschen genannt: %1 von %2; nie vermischt mit Taschen, die aus den Kugeln gelesen wurden.</translation>
        </message>
        <message>
            <source>Left out, since its pockets differ: %1 (mouth %2 mm, %3).</source>
            <translation>Ausgelassen, da die Taschen anders sind: %1 (Öffnung %2 mm, %3).</translation>
        </message>
        <message>
            <source>Dated in the future: %1. Check the clock.</source>
            <translation>In der Zukunft datiert: %1. Prüfen Sie die Uhr.</translation>
        </message>
    </context>
    <context>
        <name>ReportBuilder</name>
        <message>
            <source>Progress report: %1</source>
            <translation>Fortschrittsbericht: %1</translation>
        </message>
        <message>
            <source>%1 · made with Ferrule on %2</source>
            <translation>%1 · erstellt mit Ferrule am %2</translation>
        </message>
        <message>
            <source>Pots</source>
            <translation>Lochen</translation>
        </message>
        <message>
            <source>Pots whose pocket was named by a person. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>Versuche, deren Tasche ein Mensch genannt hat. Jedes Feld zeigt, wie viele der versuchten Kugeln fielen, zwischen welchen Anteilen der wahre liegt und wie viele versucht wurden.</translation>
        </message>
        <message>
            <source>Made by cut and distance: %1.</source>
            <translation>Gelocht nach Schnitt und Weg: %1.</translation>
        </message>
        <message>
            <source>All pots</source>
            <translation>Alle Versuche</translation>
        </message>
        <message>
            <source>made</source>
            <translation>gelocht</translation>
        </message>
        <message>
            <source>95 % interval</source>
            <translation>95-%-Bereich</translation>
        </message>
        <message>
            <source>tried</source>
            <translation>versucht</translation>
        </message>
        <message>
            <source>pocket read from the balls</source>
            <translation>Tasche aus dem Lauf gelesen</translation>
        </message>
        <message>
            <source>pocket named by a person</source>
            <translation>Tasche von einem Menschen genannt</translation>
        </message>
        <message>
            <source>Aim and speed</source>
            <translation>Zielen und Tempo</translation>
        </message>
        <message>
            <source>How far the strokes scatter, session by session: lower is steadier. The aim is worked out from the line on which the object ball ran, so near and far shots compare.</source>
            <translation>Wie weit die Stöße streuen, Sitzung für Sitzung: tiefer ist ruhiger. Das Zielen wird aus der Linie der Objektkugel errechnet, damit sich nahe und weite Stöße vergleichen lassen.</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>Streuung des Zielens</translation>
        </message>
        <message>
            <source>Scatter of the aim: not enough sessions with %1 or more to draw.</source>
            <translation>Streuung des Zielens: zu wenige Sitzungen mit mindestens %1.</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>Streuung des Tempos bei wiederholten Stellungen</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>Streuung des Tempos</translation>
        </message>
        <message>
            <source>Scatter of the speed: not enough sessions with %1 or more to draw.</source>
            <translation>Streuung des Tempos: zu wenige Sitzungen mit mindestens %1.</translation>
        </message>
        <message>
            <source>Scatter of the speed: %1.</source>
            <translation>Streuung des Tempos: %1.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <translation>Stoß</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>shots</source>
            <translation>Stöße</translation>
        </message>
        <message>
            <source>aim: scatter</source>
            <translation>Zielen: Streuung</translation>
        </message>
        <message>
            <source>aim: mean, + to the left</source>
            <translation>Zielen: Mittel, + nach links</translation>
        </message>
        <message>
            <source>cuts to the left: mean, + thin, − thick</source>
            <translation>Schnitte nach links: Mittel, + dünn, − dick</translation>
        </message>
        <message>
            <source>cuts to the right: mean, + thin, − thick</source>
            <translation>Schnitte nach rechts: Mittel, + dünn, − dick</translation>
        </message>
        <message>
            <source>speed: scatter</source>
            <translation>Tempo: Streuung</translation>
        </message>
        <message>
            <source>speed: mean error</source>
            <translation>Tempo: mittlerer Fehler</translation>
        </message>
        <message>
            <source>tip point, side: scatter</source>
            <translation>Stoßpunkt, Seite: Streuung</translation>
        </message>
        <message>
            <source>tip point, height: scatter</source>
            <translation>Stoßpunkt, Höhe: Streuung</translation>
        </message>
        <message>
            <source>rest of the cue ball: scatter each way</source>
            <translation>Ruheplatz der Weißen: Streuung je Richtung</translation>
        </message>
        <message>
            <source>Nobody wrote down what was meant, so speed, tip point and rest are compared with the player's own mean in set-ups that were repeated: this shows how well a stroke is repeated, not whether it was right.</source>
            <translation>Niemand hat notiert, was gewollt war; darum werden Tempo, Stoßpunkt und Ruheplatz mit dem eigenen Mittel bei wiederholten Stellungen verglichen. Das zeigt, wie gut ein Stoß wiederholt wird, nicht, ob er richtig war.</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>Das Spiel</translation>
        </message>
        <message>
            <source>Measure</source>
            <translation>Maß</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>gezählt</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>Anstoß: eine Kugel und kein Foul</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>Anstoß: Kugeln</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>Kugeln je Aufnahme</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>gewonnene Spiele in einer Aufnahme</translation>
        </message>
        <message>
            <source>safeties that left no direct shot</source>
            <translation>Sicherheiten ohne direkten Stoß danach</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>Fouls, von allen Stößen</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>verfehlte leichte Kugeln, von allen leichten</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>Zeit für einen Stoß</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>Zeit vor einer gelochten Kugel</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>Zeit vor einem Fehlstoß</translation>
        </message>
        <message>
            <source>An easy pot is one that this player makes at least four times in five. Hard shots take longer and are missed more often, so more time before a miss is no fault by itself. Innings depend on the opponent and the rack.</source>
            <translation>Leicht ist eine Kugel, die diese Person mindestens vier von fünf Malen locht. Schwere Stöße dauern länger und misslingen öfter; mehr Zeit vor einem Fehlstoß ist für sich kein Fehler. Aufnahmen hängen vom Gegner und vom Aufbau ab.</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Wahl und Ausführung</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: no suggestions are recorded for these shots.</source>
            <translation>Ob der richtige Stoß gewählt wurde, lässt sich nicht sagen: Für diese Stöße sind keine Vorschläge aufgezeichnet.</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: %1.</source>
            <translation>Ob der richtige Stoß gewählt wurde, lässt sich nicht sagen: %1.</translation>
        </message>
        <message>
            <source>by the choice</source>
            <translation>durch die Wahl</translation>
        </message>
        <message>
            <source>by the delivery</source>
            <translation>durch die Ausführung</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>gut ausgeführt</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>schlecht ausgeführt</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>gute Wahl</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>schwache Wahl</translation>
        </message>
        <message>
            <source>Options that are too close to tell apart count as good. A shot is never wrong merely for differing from the suggestion.</source>
            <translation>Möglichkeiten, die sich kaum unterscheiden, zählen als gut. Ein Stoß ist nie schon deshalb falsch, weil er vom Vorschlag abweicht.</translation>
        </message>
        <message>
            <source>%1, %2, shot %3 to %4</source>
            <translation>%1, %2, Stoß %3 in die Tasche %4</translation>
        </message>
        <message>
            <source>Worth looking at again</source>
            <translation>Noch einmal ansehen</translation>
        </message>
        <message>
            <source>The best: %1. This player makes such a ball about %2 of the time.</source>
            <translation>Der beste: %1. Eine solche Kugel fällt bei dieser Person in etwa %2 der Fälle.</translation>
        </message>
        <message>
            <source>The most instructive: %1. Missed, though such a ball goes in about %2 of the time.</source>
            <translation>Der lehrreichste: %1. Verfehlt, obwohl eine solche Kugel in etwa %2 der Fälle fällt.</translation>
        </message>
        <message>
            <source>How the numbers were made</source>
            <translation>Wie die Zahlen entstanden</translation>
        </message>
        <message>
            <source>Intervals hold the true value 95 times in 100. They come from drawing whole sessions again, since shots of one day are alike; shares of single cells are Wilson intervals.</source>
            <translation>Die Bereiche enthalten den wahren Wert 95-mal von 100. Sie entstehen, indem ganze Sitzungen neu gezogen werden, denn Stöße eines Tages ähneln sich; Anteile einzelner Felder sind Wilson-Bereiche.</translation>
        </message>
        <message>
            <source>All findings of this report together raise a false alarm in at most 5 of 100 reports about players of whom none is true.</source>
            <translation>Alle Befunde dieses Berichts zusammen geben in höchstens 5 von 100 Berichten über Personen, auf die keiner zutrifft, einen falschen Alarm.</translation>
        </message>
        <message>
            <source>Harder shots are allowed for: what went in is compared with what this player makes of shots with the same cut, distances and pocket.</source>
            <translation>Schwerere Stöße sind berücksichtigt: Was fiel, wird damit verglichen, was diese Person bei gleichem Schnitt, gleichen Wegen und gleicher Tasche locht.</translation>
        </message>
        <message>
            <source>Tables whose pockets differ in width are never put together, and players are not ranked.</source>
            <translation>Tische mit verschieden breiten Taschen werden nie zusammengeworfen, und Personen werden nicht gereiht.</translation>
        </message>
        <message>
            <source>Position</source>
            <translation>Stellung</translation>
        </message>
        <message>
            <source>On which side of the next ball the cue ball was left: %1.</source>
            <translation>Auf welcher Seite der nächsten Kugel die Weiße lag: %1.</translation>
        </message>
        <message>
            <source>The drill with most tries: %1</source>
            <translation>Die Übung mit den meisten Versuchen: %1</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>Versuche, die jedes Ziel erreichten</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>Aufnahmen je Spiel</translation>
        </message>
        <message>
            <source>Pots whose pocket was read from the paths of the balls; a lucky ball may count as meant. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>Versuche, deren Tasche aus dem Lauf der Kugeln gelesen wurde; ein Glückstreffer kann als gewollt zählen. Jedes Feld zeigt, wie viele der versuchten Kugeln fielen, zwischen welchen Anteilen der wahre liegt und wie viele versucht wurden.</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>Gelocht, nach Schnitt und Abstand der Weißen</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>Gelocht, nach Schnitt und Abstand zur Tasche</translation>
        </message>
        <message>
            <source>On which side the misses lie: too few missed cuts to say.</source>
            <translation>Auf welcher Seite die Fehlstöße liegen: zu wenige verfehlte Schnitte für eine Aussage.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>least, most</comment>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>Two strokes in three lie within the scatter on either side of the mean. R: the ball's radius.</source>
            <translation>Zwei von drei Stößen liegen beiderseits des Mittels innerhalb der Streuung. R: Radius der Kugel.</translation>
        </message>
        <message>
            <source>break: distance of the cue ball from the middle</source>
            <translation>Anstoß: Abstand der Weißen von der Mitte</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan</source>
            <translation>Gelochte Kugeln, gegen den Plan</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>auf der falschen Seite der nächsten Kugel</translation>
        </message>
        <message>
            <source>cost on the right side, of the frame's chance</source>
            <translation>Kosten auf der richtigen Seite, von der Gewinnchance</translation>
        </message>
        <message>
            <source>cost on the wrong side, of the frame's chance</source>
            <translation>Kosten auf der falschen Seite, von der Gewinnchance</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>länger (+) oder kürzer als gemeint</translation>
        </message>
        <message>
            <source>Cost of a shot, of the chance to win the frame</source>
            <translation>Kosten eines Stoßes, von der Chance auf das Spiel</translation>
        </message>
    </context>
    <context>
        <name>ReportWords</name>
        <message>
            <source>d MMMM yyyy</source>
            <translation>d. MMMM yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d. MMM</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln Stoß</numerusform>
                <numerusform>%Ln Stöße</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln session(s)</source>
            <translation>
                <numerusform>%Ln Sitzung</numerusform>
                <numerusform>%Ln Sitzungen</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 shots</source>
            <translation>noch zu wenig: %1 von %2 Stößen</translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 sessions</source>
            <translation>noch zu wenig: %1 von %2 Sitzungen</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant, and no set-up was repeated</source>
            <translation>niemand hat notiert, was gewollt war, und keine Stellung wurde wiederholt</translation>
        </message>
        <message>
            <source>the films have no clock</source>
            <translation>die Filme haben keine Uhr</translation>
        </message>
        <message>
            <source>not recorded yet</source>
            <translation>noch nicht aufgezeichnet</translation>
        </message>
        <message>
            <source>the aim over the weeks</source>
            <translation>das Zielen über die Wochen</translation>
        </message>
        <message>
            <source>the control of speed over the weeks</source>
            <translation>das Tempo über die Wochen</translation>
        </message>
        <message>
            <source>the balls potted over the weeks</source>
            <translation>die gelochten Kugeln über die Wochen</translation>
        </message>
        <message>
            <source>the aim after 40 minutes</source>
            <translation>das Zielen nach 40 Minuten</translation>
        </message>
        <message>
            <source>the balls potted after 40 minutes</source>
            <translation>die gelochten Kugeln nach 40 Minuten</translation>
        </message>
        <message>
            <source>the balls potted in matches</source>
            <translation>die gelochten Kugeln im Wettkampf</translation>
        </message>
        <message>
            <source>a pull to the left or right</source>
            <translation>ein Zug nach links oder rechts</translation>
        </message>
        <message>
            <source>thick or thin cuts to the left</source>
            <translation>dicke oder dünne Schnitte nach links</translation>
        </message>
        <message>
            <source>thick or thin cuts to the right</source>
            <translation>dicke oder dünne Schnitte nach rechts</translation>
        </message>
        <message>
            <source>The aim got steadier: from about %1 off to about %2 off.</source>
            <translation>Das Zielen wurde ruhiger: von etwa %1 daneben auf etwa %2 daneben.</translation>
        </message>
        <message>
            <source>The aim got less steady: from about %1 off to about %2 off.</source>
            <translation>Das Zielen wurde unruhiger: von etwa %1 daneben auf etwa %2 daneben.</translation>
        </message>
        <message>
            <source>The speed of the stroke got steadier: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>Das Tempo des Stoßes wurde gleichmäßiger: Es schwankte anfangs um etwa %1 und am Ende um etwa %2.</translation>
        </message>
        <message>
            <source>The speed of the stroke got less steady: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>Das Tempo des Stoßes wurde ungleichmäßiger: Es schwankte anfangs um etwa %1 und am Ende um etwa %2.</translation>
        </message>
        <message>
            <source>Fewer balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>Es fielen weniger Kugeln: von 100 versuchten anfangs etwa %1 und am Ende %2, ihre Schwierigkeit eingerechnet.</translation>
        </message>
        <message>
            <source>More balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>Es fielen mehr Kugeln: von 100 versuchten anfangs etwa %1 und am Ende %2, ihre Schwierigkeit eingerechnet.</translation>
        </message>
        <message>
            <source>The aim is better late in a session: about %1 off before 40 minutes and %2 after.</source>
            <translation>Das Zielen ist spät in einer Sitzung besser: etwa %1 daneben vor 40 Minuten und %2 danach.</translation>
        </message>
        <message>
            <source>The aim gets worse when a session grows long: about %1 off before 40 minutes and %2 after. A break may help.</source>
            <translation>Das Zielen lässt nach, wenn eine Sitzung lang wird: etwa %1 daneben vor 40 Minuten und %2 danach. Eine Pause kann helfen.</translation>
        </message>
        <message>
            <source>Fewer balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>Spät in einer Sitzung fallen weniger Kugeln: von 100 gleich schweren etwa %1 vor 40 Minuten und %2 danach.</translation>
        </message>
        <message>
            <source>More balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>Spät in einer Sitzung fallen mehr Kugeln: von 100 gleich schweren etwa %1 vor 40 Minuten und %2 danach.</translation>
        </message>
        <message>
            <source>The aim is pulled to the right by %1 on average, whichever way the ball has to go.</source>
            <translation>Das Zielen zieht im Mittel um %1 nach rechts, wohin die Kugel auch soll.</translation>
        </message>
        <message>
            <source>The aim is pulled to the left by %1 on average, whichever way the ball has to go.</source>
            <translation>Das Zielen zieht im Mittel um %1 nach links, wohin die Kugel auch soll.</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>Kugeln, die nach links müssen, werden zu dick getroffen: Das Zielen liegt im Mittel um %1 daneben.</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too thin: the aim is off by %1 on average.</source>
            <translation>Kugeln, die nach links müssen, werden zu dünn getroffen: Das Zielen liegt im Mittel um %1 daneben.</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>Kugeln, die nach rechts müssen, werden zu dick getroffen: Das Zielen liegt im Mittel um %1 daneben.</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too thin: the aim is off by %1 on average.</source>
            <translation>Kugeln, die nach rechts müssen, werden zu dünn getroffen: Das Zielen liegt im Mittel um %1 daneben.</translation>
        </message>
        <message>
            <source>Centre-line there and back</source>
            <translation>Mittellinie hin und zurück</translation>
        </message>
        <message>
            <source>Cut fan, left half</source>
            <translation>Schnittfächer, linke Hälfte</translation>
        </message>
        <message>
            <source>Cut fan, right half</source>
            <translation>Schnittfächer, rechte Hälfte</translation>
        </message>
        <message>
            <source>Cut fan as the last drill of the day</source>
            <translation>Schnittfächer als letzte Übung des Tages</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>Gerade Stoppleiter</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>Dünner Schnitt</translation>
        </message>
        <message>
            <source>Send the cue ball alone from the head spot over the middle of the foot cushion and back; it should return over its start.</source>
            <translation>Spielen Sie die Weiße allein vom Kopfpunkt über die Mitte der Fußbande zurück; sie soll über ihren Start laufen.</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the left.</source>
            <translation>Objektkugel auf der Mittellinie, ein Viertel vor der Fußbande; Weiße eine halbe Tischbreite entfernt; Schnitte von 15, 30, 45 und 60 Grad nach links.</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the right.</source>
            <translation>Objektkugel auf der Mittellinie, ein Viertel vor der Fußbande; Weiße eine halbe Tischbreite entfernt; Schnitte von 15, 30, 45 und 60 Grad nach rechts.</translation>
        </message>
        <message>
            <source>Cuts of 15, 30, 45 and 60 degrees to both sides, played after 40 minutes of practice: rest for five minutes first, and keep the routine.</source>
            <translation>Schnitte von 15, 30, 45 und 60 Grad nach beiden Seiten, gespielt nach 40 Minuten Training: vorher fünf Minuten Pause, und den Ablauf beibehalten.</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer; the cue ball stops dead at the contact.</source>
            <translation>Gerade Kugeln aus vier Entfernungen, jede einen Schritt länger; die Weiße bleibt beim Treffen stehen.</translation>
        </message>
        <message>
            <source>Object ball a quarter of the table from the foot cushion and near the side; cut of 65 degrees into the corner.</source>
            <translation>Objektkugel einen Viertel Tisch vor der Fußbande und nahe der Seite; Schnitt von 65 Grad in die Ecke.</translation>
        </message>
        <message>
            <source>Object ball on the foot spot, cue ball behind the head string: cuts of 33, 47 and 60 degrees into the corner.</source>
            <translation>Objektkugel auf dem Fußpunkt, Weiße hinter der Kopflinie: Schnitte von 33, 47 und 60 Grad in die Ecke.</translation>
        </message>
        <message>
            <source>The pull of the aim to one side</source>
            <translation>Der Zug des Zielens zu einer Seite</translation>
        </message>
        <message>
            <source>Cuts to the left</source>
            <translation>Schnitte nach links</translation>
        </message>
        <message>
            <source>Cuts to the right</source>
            <translation>Schnitte nach rechts</translation>
        </message>
        <message>
            <source>The end of long sessions</source>
            <translation>Das Ende langer Sitzungen</translation>
        </message>
        <message>
            <source>Long shots</source>
            <translation>Lange Stöße</translation>
        </message>
        <message>
            <source>Thin cuts</source>
            <translation>Dünne Schnitte</translation>
        </message>
        <message>
            <source>Short and medium shots</source>
            <translation>Kurze und mittlere Stöße</translation>
        </message>
        <message>
            <source>%1 such pots were tried and %2 made.</source>
            <translation>Solche Versuche: %1, gelocht davon %2.</translation>
        </message>
        <message>
            <source>Target: %1 of %2.</source>
            <translation>Ziel: %1 von %2.</translation>
        </message>
        <message>
            <source>Test again on %1.</source>
            <translation>Neuer Test am %1.</translation>
        </message>
        <message>
            <source>Fewer balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>Im Wettkampf fallen weniger Kugeln: von 100 gleich schweren etwa %1 im Training und %2 im Wettkampf.</translation>
        </message>
        <message>
            <source>More balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>Im Wettkampf fallen mehr Kugeln: von 100 gleich schweren etwa %1 im Training und %2 im Wettkampf.</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant</source>
            <translation>niemand hat notiert, was gewollt war</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>Ausspielen zur Kopfbande</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>Gerader Rückläufer in Zonen</translation>
        </message>
        <message>
            <source>Send the cue ball alone from behind the head string to the foot cushion and back; it should stop as near to the head cushion as it can.</source>
            <translation>Die Weiße allein von hinter der Kopflinie zur Fußbande und zurück spielen; sie soll so nah wie möglich an der Kopfbande liegen bleiben.</translation>
        </message>
        <message>
            <source>Straight pots of a metre; the cue ball comes back by nothing, one, two and three hands' breadths, called before each stroke.</source>
            <translation>Gerade Kugeln über einen Meter; die Weiße kommt um nichts, eine, zwei und drei Handbreit zurück, vor jedem Stoß angesagt.</translation>
        </message>
        <message>
            <source>Control of the speed</source>
            <translation>Kontrolle des Tempos</translation>
        </message>
        <message>
            <source>Where the tip meets the ball</source>
            <translation>Wo das Leder die Kugel trifft</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the speed.</source>
            <translation>%1 Stöße wurden im Simulator noch einmal gespielt, mit einem Fünftel weniger Streuung des Tempos.</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the tip.</source>
            <translation>%1 Stöße wurden im Simulator noch einmal gespielt, mit einem Fünftel weniger Streuung des Stoßpunkts.</translation>
        </message>
        <message>
            <source>Target: speeds that scatter by %1 or less.</source>
            <translation>Ziel: ein Tempo, das um höchstens %1 streut.</translation>
        </message>
        <message>
            <source>Target: a tip that scatters by %1 of the ball's radius or less.</source>
            <translation>Ziel: ein Stoßpunkt, der um höchstens %1 des Ballradius streut.</translation>
        </message>
        <message>
            <source>Were these a fifth steadier, about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>Wären diese um ein Fünftel ruhiger, würden von je 100 versuchten etwa %1 Kugeln mehr fallen (sehr wahrscheinlich %2).</translation>
        </message>
        <message>
            <source>Without this habit about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>Ohne diese Gewohnheit würden von je 100 versuchten etwa %1 Kugeln mehr fallen (sehr wahrscheinlich %2).</translation>
        </message>
        <message>
            <source>That is worth about %1 frames of every 100 (very probably %2).</source>
            <translation>Das ist etwa %1 von 100 Spielen wert (sehr wahrscheinlich %2).</translation>
        </message>
        <message>
            <source>%1 or more of %2 would prove by themselves that it was no luck.</source>
            <translation>%1 oder mehr von %2 würden für sich allein beweisen, dass es kein Glück war.</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>Lange Schnitte vom Fußpunkt</translation>
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
            <translation>Bild %1 von %2</translation>
        </message>
    </context>
    <context>
        <name>RulingSentence</name>
        <message>
            <source>Foul: %1.</source>
            <translation>Foul: %1.</translation>
        </message>
        <message>
            <source> and </source>
            <comment>last of a list</comment>
            <translation> und </translation>
        </message>
        <message>
            <source>A push-out.</source>
            <translation>Ein Push-out.</translation>
        </message>
        <message>
            <source>The break was too weak, which is no foul.</source>
            <translation>Der Anstoß war zu schwach; das ist kein Foul.</translation>
        </message>
        <message>
            <source>%1 has %2.</source>
            <translation>%1 hat %2.</translation>
        </message>
        <message>
            <source>%1 is spotted.</source>
            <translation>%1 wird aufgesetzt.</translation>
        </message>
        <message>
            <source>%1 is put back.</source>
            <translation>%1 wird zurückgelegt.</translation>
        </message>
        <message>
            <source>All balls are racked.</source>
            <translation>Alle Kugeln werden aufgebaut.</translation>
        </message>
        <message>
            <source>14 balls are racked without the apex.</source>
            <translation>14 Kugeln werden ohne die Spitze aufgebaut.</translation>
        </message>
        <message>
            <source>%1 is at the table, %2.</source>
            <translation>%1 ist am Tisch, %2.</translation>
        </message>
        <message>
            <source>%1 plays on.</source>
            <translation>%1 spielt weiter.</translation>
        </message>
        <message>
            <source>%1 is at the table.</source>
            <translation>%1 ist am Tisch.</translation>
        </message>
        <message>
            <source>%1 may choose: %2.</source>
            <translation>%1 darf wählen: %2.</translation>
        </message>
        <message>
            <source> or </source>
            <comment>last of a list</comment>
            <translation> oder </translation>
        </message>
        <message>
            <source>%1: %2, now %3.</source>
            <comment>player, points of the shot, points in all</comment>
            <translation>%1: %2, nun %3.</translation>
        </message>
        <message>
            <source>%1 wins the frame: %2.</source>
            <translation>%1 gewinnt das Spiel: %2.</translation>
        </message>
        <message>
            <source>Overruled by %1.</source>
            <translation>Überstimmt von %1.</translation>
        </message>
    </context>
    <context>
        <name>RulingWords</name>
        <message>
            <source>the first player</source>
            <translation>der erste Spieler</translation>
        </message>
        <message>
            <source>the second player</source>
            <translation>der zweite Spieler</translation>
        </message>
        <message>
            <source>a ball</source>
            <translation>eine Kugel</translation>
        </message>
        <message>
            <source>another ball</source>
            <translation>eine andere Kugel</translation>
        </message>
        <message>
            <source>a wrong ball</source>
            <translation>eine falsche Kugel</translation>
        </message>
        <message>
            <source>Which ball was met first, %1 or %2?</source>
            <translation>Welche Kugel wurde zuerst getroffen, %1 oder %2?</translation>
        </message>
        <message>
            <source>Did %1 touch a cushion?</source>
            <translation>Hat %1 eine Bande berührt?</translation>
        </message>
        <message>
            <source>Did %1 fall?</source>
            <translation>Ist %1 gefallen?</translation>
        </message>
        <message>
            <source>Where did %1 end: on the table, in a pocket or off the table?</source>
            <translation>Wo ist %1 geblieben: auf dem Tisch, in einer Tasche oder neben dem Tisch?</translation>
        </message>
        <message>
            <source>Did %1 leave the table and touch anything before it came back?</source>
            <translation>Hat %1 den Tisch verlassen und etwas berührt, bevor sie zurückkam?</translation>
        </message>
        <message>
            <source>Did somebody touch %1?</source>
            <translation>Hat jemand %1 berührt?</translation>
        </message>
        <message>
            <source>Was the cue ball struck twice? It lay very close to %1.</source>
            <translation>Wurde die Weiße zweimal gestoßen? Sehr nah lag dort %1.</translation>
        </message>
        <message>
            <source>Was %1 declared frozen to the cushion?</source>
            <translation>Wurde %1 als press an der Bande angesagt?</translation>
        </message>
        <message>
            <source>Which was which, %1 and %2?</source>
            <translation>Welche war welche, %1 und %2?</translation>
        </message>
        <message>
            <source>Did %1 lie behind the head string?</source>
            <translation>Lag %1 hinter der Kopflinie?</translation>
        </message>
        <message>
            <source>Was %1 called in that pocket?</source>
            <translation>War %1 in diese Tasche angesagt?</translation>
        </message>
        <message>
            <source>the cue ball fell or left the table</source>
            <translation>die Weiße fiel oder verließ den Tisch</translation>
        </message>
        <message>
            <source>%1 was met first</source>
            <translation>%1 wurde zuerst getroffen</translation>
        </message>
        <message>
            <source>no ball was met</source>
            <translation>keine Kugel wurde getroffen</translation>
        </message>
        <message>
            <source>nothing fell and no ball met a cushion after the contact</source>
            <translation>nichts fiel, und nach der Berührung lief keine Kugel an eine Bande</translation>
        </message>
        <message>
            <source>no foot was on the floor</source>
            <translation>kein Fuß war auf dem Boden</translation>
        </message>
        <message>
            <source>%1 left the table</source>
            <translation>%1 verließ den Tisch</translation>
        </message>
        <message>
            <source>%1 was touched</source>
            <translation>%1 wurde berührt</translation>
        </message>
        <message>
            <source>the cue ball was struck twice</source>
            <translation>die Weiße wurde zweimal gestoßen</translation>
        </message>
        <message>
            <source>the cue ball was pushed</source>
            <translation>die Weiße wurde geschoben</translation>
        </message>
        <message>
            <source>balls were still moving</source>
            <translation>Kugeln liefen noch</translation>
        </message>
        <message>
            <source>the cue ball was not placed behind the head string</source>
            <translation>die Weiße lag nicht hinter der Kopflinie</translation>
        </message>
        <message>
            <source>the cue ball did not cross the head string before it met %1</source>
            <translation>die Weiße lief nicht über die Kopflinie, bevor diese Kugel getroffen wurde: %1</translation>
        </message>
        <message>
            <source>the cue was laid on the table to aim</source>
            <translation>das Queue lag zum Zielen auf dem Tisch</translation>
        </message>
        <message>
            <source>it was the other's turn</source>
            <translation>die andere Seite war an der Reihe</translation>
        </message>
        <message>
            <source>the time was over</source>
            <translation>die Zeit war abgelaufen</translation>
        </message>
        <message>
            <source>the rack template was in the way</source>
            <translation>die Aufbauschablone lag im Weg</translation>
        </message>
        <message>
            <source>unsportsmanlike conduct</source>
            <translation>unsportliches Verhalten</translation>
        </message>
        <message>
            <source>too few balls were driven to a cushion on the break</source>
            <translation>beim Anstoß liefen zu wenige Kugeln an eine Bande</translation>
        </message>
        <message>
            <source>Did balls still move when the shot began?</source>
            <translation>Liefen noch Kugeln, als der Stoß begann?</translation>
        </message>
        <message>
            <source>Did the cue ball lie behind the head string?</source>
            <translation>Lag die Weiße hinter der Kopflinie?</translation>
        </message>
        <message>
            <source>The film does not show the shot well enough. What happened?</source>
            <translation>Der Film zeigt den Stoß nicht gut genug. Was ist geschehen?</translation>
        </message>
        <message>
            <source>Who plays the solids and who the stripes?</source>
            <translation>Wer spielt die Vollen und wer die Halben?</translation>
        </message>
        <message>
            <source>How many balls fell or passed the head string on the break?</source>
            <translation>Wie viele Kugeln fielen beim Anstoß oder liefen über die Kopflinie?</translation>
        </message>
        <message>
            <source>Was a push-out announced?</source>
            <translation>Wurde ein Push-out angesagt?</translation>
        </message>
        <message>
            <source>Was the player told of two fouls in a row?</source>
            <translation>Wurde der Spieler auf zwei Fouls in Folge hingewiesen?</translation>
        </message>
        <message>
            <source>Other balls lie on the table than the shots before left there. Which are in play?</source>
            <translation>Auf dem Tisch liegen andere Kugeln, als die Stöße davor übrig ließen. Welche sind im Spiel?</translation>
        </message>
        <message>
            <source>The rules do not spell this case out. How is it ruled?</source>
            <translation>Die Regeln nennen diesen Fall nicht. Wie wird entschieden?</translation>
        </message>
        <message>
            <source>The frame was over before this shot. Was it?</source>
            <translation>Das Spiel war vor diesem Stoß zu Ende. Stimmt das?</translation>
        </message>
        <message>
            <source>play from here</source>
            <translation>so weiterspielen</translation>
        </message>
        <message>
            <source>take the cue ball in hand</source>
            <translation>die Weiße in die Hand nehmen</translation>
        </message>
        <message>
            <source>take it behind the head string</source>
            <translation>die Weiße hinter die Kopflinie legen</translation>
        </message>
        <message>
            <source>have the balls racked and break</source>
            <translation>neu aufbauen lassen und anstoßen</translation>
        </message>
        <message>
            <source>have %1 break again</source>
            <translation>%1 noch einmal anstoßen lassen</translation>
        </message>
        <message>
            <source>have the 8 spotted and play</source>
            <translation>die 8 aufsetzen lassen und spielen</translation>
        </message>
        <message>
            <source>have %1 play on</source>
            <translation>%1 weiterspielen lassen</translation>
        </message>
        <message>
            <source>the 8 was potted as called</source>
            <translation>die 8 fiel wie angesagt</translation>
        </message>
        <message>
            <source>the 8 fell on a foul</source>
            <translation>die 8 fiel bei einem Foul</translation>
        </message>
        <message>
            <source>the 8 fell before its time</source>
            <translation>die 8 fiel zu früh</translation>
        </message>
        <message>
            <source>the 8 fell into a pocket that was not called</source>
            <translation>die 8 fiel in eine nicht angesagte Tasche</translation>
        </message>
        <message>
            <source>the 8 left the table</source>
            <translation>die 8 verließ den Tisch</translation>
        </message>
        <message>
            <source>the 8 fell on the break</source>
            <translation>die 8 fiel beim Anstoß</translation>
        </message>
        <message>
            <source>the 8 and the cue ball fell on the break</source>
            <translation>die 8 und die Weiße fielen beim Anstoß</translation>
        </message>
        <message>
            <source>the cue ball was lost with the 8 on</source>
            <translation>die Weiße ging beim Spiel auf die 8 verloren</translation>
        </message>
        <message>
            <source>the 9 was potted</source>
            <translation>die 9 fiel</translation>
        </message>
        <message>
            <source>the 10 was potted as called</source>
            <translation>die 10 fiel wie angesagt</translation>
        </message>
        <message>
            <source>the points are reached</source>
            <translation>die Punkte sind erreicht</translation>
        </message>
        <message>
            <source>three fouls in a row</source>
            <translation>drei Fouls in Folge</translation>
        </message>
        <message>
            <source>the other conceded</source>
            <translation>die andere Seite gab auf</translation>
        </message>
        <message>
            <source>ruled by a person</source>
            <translation>von Hand entschieden</translation>
        </message>
        <message>
            <source>the solids</source>
            <translation>die Vollen</translation>
        </message>
        <message>
            <source>the stripes</source>
            <translation>die Halben</translation>
        </message>
        <message>
            <source>cue ball in hand behind the head string</source>
            <translation>Weiße in der Hand hinter der Kopflinie</translation>
        </message>
        <message>
            <source>cue ball in hand</source>
            <translation>Weiße in der Hand</translation>
        </message>
        <message>
            <source>cue ball on the head spot</source>
            <translation>Weiße auf dem Kopfpunkt</translation>
        </message>
        <message>
            <source>cue ball on the centre spot</source>
            <translation>Weiße auf dem Mittelpunkt</translation>
        </message>
        <message>
            <source>rules before 2008</source>
            <translation>Regeln vor 2008</translation>
        </message>
        <message>
            <source>house rule</source>
            <translation>Hausregel</translation>
        </message>
        <message>
            <source>world rules 2008, %1</source>
            <translation>Weltregeln 2008, %1</translation>
        </message>
        <message>
            <source>world rules 2016, %1</source>
            <translation>Weltregeln 2016, %1</translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message>
            <source>Practice without a referee</source>
            <translation>Training ohne Schiedsrichter</translation>
        </message>
        <message>
            <source>%1 won: %2.</source>
            <translation>%1 hat gewonnen: %2.</translation>
        </message>
        <message>
            <source>%1 breaks</source>
            <translation>%1 stößt an</translation>
        </message>
        <message>
            <source>%1 is on the 8</source>
            <translation>%1 spielt auf die 8</translation>
        </message>
        <message>
            <source>%1 is at the table and has %2</source>
            <translation>%1 ist am Tisch und hat %2</translation>
        </message>
        <message>
            <source>%1 is at the table</source>
            <translation>%1 ist am Tisch</translation>
        </message>
        <message>
            <source>Choose the ball that is played for, then say what happened.</source>
            <translation>Die gespielte Kugel wählen, dann sagen, was geschah.</translation>
        </message>
        <message>
            <source>%1; choose its pocket.</source>
            <translation>%1; jetzt die Tasche wählen.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 nach %2</translation>
        </message>
        <message>
            <source>%1 is at the table, %2 to %3</source>
            <comment>player, points of the first and the second seat</comment>
            <translation>%1 ist am Tisch, %2 zu %3</translation>
        </message>
        <message>
            <source>%1, cut %2</source>
            <comment>ball to pocket, angle</comment>
            <translation>%1, Schnitt %2</translation>
        </message>
        <message>
            <source>%1  %2, %3</source>
            <comment>rank, plan, speed</comment>
            <translation>%1  %2, %3</translation>
        </message>
        <message>
            <source>easy</source>
            <translation>leicht</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>mittel</translation>
        </message>
        <message>
            <source>hard</source>
            <translation>schwer</translation>
        </message>
        <message>
            <source>very hard</source>
            <translation>sehr schwer</translation>
        </message>
        <message>
            <source>%1 for this player: the aim may be off by %2 to the left and %3 to the right.</source>
            <translation>%1 für diesen Spieler: Das Zielen darf um %2 nach links und %3 nach rechts abweichen.</translation>
        </message>
        <message>
            <source>The record holds no measured pot of this player; a club player stands in.</source>
            <translation>Die Aufzeichnung enthält keinen gemessenen Lochversuch dieses Spielers; ein Vereinsspieler steht dafür.</translation>
        </message>
        <message numerus="yes">
            <source>Aim spread %1, from %n measured shot(s).</source>
            <translation>
                <numerusform>Streuung des Zielens %1, aus %n gemessenen Stoß.</numerusform>
                <numerusform>Streuung des Zielens %1, aus %n gemessenen Stößen.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SetUpWords</name>
        <message>
            <source>%1 to the foot</source>
            <translation>%1 zum Fuß</translation>
        </message>
        <message>
            <source>%1 to the head</source>
            <translation>%1 zum Kopf</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>%1 nach links</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>%1 nach rechts</translation>
        </message>
        <message>
            <source>%1 is not at its place.</source>
            <translation>%1 ist nicht an ihrem Platz.</translation>
        </message>
        <message>
            <source>%1: %2 off, stands.</source>
            <translation>%1: %2 daneben, steht.</translation>
        </message>
        <message>
            <source>%1: %2 off; move it %3.</source>
            <comment>a ball, a length, where</comment>
            <translation>%1: %2 daneben; %3 rücken.</translation>
        </message>
        <message>
            <source>Loose balls are missing, or lie too close to each other or to a cushion.</source>
            <translation>Lose Kugeln fehlen oder liegen zu nah beieinander oder an einer Bande.</translation>
        </message>
        <message>
            <source>The cue ball in hand is not where it may lie.</source>
            <translation>Die Weiße in der Hand liegt nicht, wo sie darf.</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) lie there that do not belong to the set-up.</source>
            <translation>
                <numerusform>%n Kugel liegt da, die nicht zur Aufstellung gehört.</numerusform>
                <numerusform>%n Kugeln liegen da, die nicht zur Aufstellung gehören.</numerusform>
            </translation>
        </message>
        <message>
            <source>Set up within %1: the try may begin.</source>
            <translation>Aufgestellt auf %1: Der Versuch kann beginnen.</translation>
        </message>
        <message>
            <source>Not yet within %1.</source>
            <translation>Noch nicht auf %1 genau.</translation>
        </message>
    </context>
    <context>
        <name>SetupSteps</name>
        <message>
            <source>Table</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Balls</source>
            <translation>Kugeln</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>Kamera</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>Objektiv</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Marken</translation>
        </message>
        <message>
            <source>Rig</source>
            <translation>Kamerastandort</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>Trust</source>
            <translation>Vertrauen</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Sichern</translation>
        </message>
        <message>
            <source>Choose the table's size, or measure it from cushion nose to cushion nose.</source>
            <translation>Die Tischgröße wählen oder von Bandennase zu Bandennase messen.</translation>
        </message>
        <message>
            <source>A ball's size tells how high its middle lies above the cloth, and where a pocket takes it.</source>
            <translation>Die Größe einer Kugel sagt, wie hoch ihre Mitte über dem Tuch liegt und wo eine Tasche sie aufnimmt.</translation>
        </message>
        <message>
            <source>Film the whole table as you will film play, and choose that film or a still of it.</source>
            <translation>Den ganzen Tisch so filmen, wie später das Spiel gefilmt wird, und diesen Film oder ein Standbild daraus wählen.</translation>
        </message>
        <message>
            <source>Every lens bends the picture. Stills of a printed board show how much, and where.</source>
            <translation>Jedes Objektiv verbiegt das Bild. Standbilder einer gedruckten Tafel zeigen, wie sehr und wo.</translation>
        </message>
        <message>
            <source>Four printed tags on the rails tell where the camera sits.</source>
            <translation>Vier gedruckte Marken auf dem Rahmen sagen, wo die Kamera sitzt.</translation>
        </message>
        <message>
            <source>Lens, tags and film together give the camera's place over this table.</source>
            <translation>Objektiv, Marken und Film zusammen ergeben den Ort der Kamera über diesem Tisch.</translation>
        </message>
        <message>
            <source>Does everything belong together? The film itself is asked.</source>
            <translation>Gehört alles zusammen? Gefragt wird der Film selbst.</translation>
        </message>
        <message>
            <source>How far a ball may be off, where that comes from, and what it is worth in a shot.</source>
            <translation>Wie weit eine Kugel daneben liegen kann, woher das kommt und was es in einem Stoß ausmacht.</translation>
        </message>
        <message>
            <source>Save the files; films of this table are measured with them from now on.</source>
            <translation>Die Dateien speichern; Filme dieses Tisches werden von nun an damit gemessen.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source> mm</source>
            <translation> mm</translation>
        </message>
        <message>
            <source>Projector</source>
            <translation>Projektor</translation>
        </message>
        <message>
            <source>If a projector hangs over the table: let the camera see where its light falls.</source>
            <translation>Hängt ein Projektor über dem Tisch: die Kamera sehen lassen, wohin sein Licht fällt.</translation>
        </message>
    </context>
    <context>
        <name>SetupWords</name>
        <message>
            <source>found</source>
            <translation>gefunden</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>nicht gefunden</translation>
        </message>
        <message>
            <source>old layout: print the board anew</source>
            <translation>altes Muster: Tafel neu drucken</translation>
        </message>
        <message>
            <source>mirrored: not used</source>
            <translation>gespiegelt: nicht benutzt</translation>
        </message>
        <message>
            <source>blurred: not used</source>
            <translation>unscharf: nicht benutzt</translation>
        </message>
        <message>
            <source>same as %1: counts once</source>
            <translation>wie %1: zählt einmal</translation>
        </message>
        <message>
            <source>other size: not used</source>
            <translation>andere Größe: nicht benutzt</translation>
        </message>
        <message>
            <source>not a picture: not used</source>
            <translation>kein Bild: nicht benutzt</translation>
        </message>
        <message>
            <source>Looking for the board</source>
            <translation>Tafel wird gesucht</translation>
        </message>
        <message>
            <source>Looking for the tags</source>
            <translation>Marken werden gesucht</translation>
        </message>
        <message>
            <source>Looking for the cushions</source>
            <translation>Banden werden gesucht</translation>
        </message>
        <message>
            <source>Looking at the film</source>
            <translation>Film wird angesehen</translation>
        </message>
        <message>
            <source>Comparing what could be wrong</source>
            <translation>Mögliche Fehler werden verglichen</translation>
        </message>
        <message>
            <source>Working it out</source>
            <translation>Wird berechnet</translation>
        </message>
        <message>
            <source>The lens foretells the board's corners to %1 px (rms) over %2 of %3 stills, out to %4 % of the way to the picture's corners.</source>
            <translation>Das Objektiv sagt die Ecken der Tafel auf %1 px (rms) voraus, über %2 von %3 Standbildern, bis auf %4 % des Weges zu den Bildecken.</translation>
        </message>
        <message>
            <source>Beyond that the lens is a guess: add stills with the board in the corners.</source>
            <translation>Darüber hinaus ist das Objektiv geraten: Standbilder mit der Tafel in den Ecken hinzufügen.</translation>
        </message>
        <message>
            <source>Turn</source>
            <translation>Drehung</translation>
        </message>
        <message>
            <source>Image size</source>
            <translation>Bildgröße</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>Objektiv</translation>
        </message>
        <message>
            <source>Camera's place</source>
            <translation>Ort der Kamera</translation>
        </message>
        <message>
            <source>Height of the tags</source>
            <translation>Höhe der Marken</translation>
        </message>
        <message>
            <source>Finding the ball</source>
            <translation>Finden der Kugel</translation>
        </message>
        <message>
            <source>Ball and bed</source>
            <translation>Kugel und Platte</translation>
        </message>
        <message>
            <source>Rows read in turn</source>
            <translation>Zeilen nacheinander gelesen</translation>
        </message>
        <message>
            <source>Measure the tags' corners again with a steel rule, and lay them far apart.</source>
            <translation>Die Ecken der Marken mit dem Stahlmaß neu messen und die Marken weit auseinander legen.</translation>
        </message>
        <message>
            <source>Add stills of the board, tilted and out to the picture's corners.</source>
            <translation>Standbilder der Tafel hinzufügen, gekippt und bis in die Bildecken.</translation>
        </message>
        <message>
            <source>Measure the height of the tags above the cloth with a depth gauge.</source>
            <translation>Die Höhe der Marken über dem Tuch mit einem Tiefenmaß messen.</translation>
        </message>
        <message>
            <source>Use a larger picture, more even light, or a cloth that differs from the balls.</source>
            <translation>Ein größeres Bild, gleichmäßigeres Licht oder ein Tuch benutzen, das sich von den Kugeln abhebt.</translation>
        </message>
        <message>
            <source>Nothing is gained here: balls and bed are as even as they are made.</source>
            <translation>Hier ist nichts zu gewinnen: Kugeln und Platte sind so eben, wie sie gemacht sind.</translation>
        </message>
        <message>
            <source>A camera that reads all rows at once would help moving balls; those at rest need none.</source>
            <translation>Eine Kamera, die alle Zeilen zugleich liest, hülfe bei rollenden Kugeln; ruhende brauchen keine.</translation>
        </message>
        <message>
            <source>Cut %1 ± %2; the ball comes %3 mm (rms) off the pocket's middle, where there are %4 mm to either side. Somebody who plays perfectly on these places pots %5 %.</source>
            <translation>Schnitt %1 ± %2; die Kugel kommt %3 mm (quadratisches Mittel) neben der Taschenmitte an, wo zu jeder Seite %4 mm sind. Wer auf diese Orte fehlerlos spielt, locht %5 %.</translation>
        </message>
    </context>
    <context>
        <name>ShotChartWords</name>
        <message>
            <source>%1, shot %2</source>
            <translation>%1, Stoß %2</translation>
        </message>
        <message>
            <source>the last %1 of %2 shots</source>
            <translation>die letzten %1 von %2 Stößen</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>Stöße auf der Zielscheibe</translation>
        </message>
        <message>
            <source>aim: left – right</source>
            <translation>Zielen: links – rechts</translation>
        </message>
        <message>
            <source>speed: harder, softer</source>
            <translation>Tempo: härter, weicher</translation>
        </message>
        <message>
            <source>Hollow: missed pots. Ellipse: 95 of 100 shots.</source>
            <translation>Hohl: verfehlte Kugeln. Ellipse: 95 von 100 Stößen.</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>Wo das Leder die Kugel traf</translation>
        </message>
        <message>
            <source>side %1 R, height %2 R</source>
            <translation>Seite %1 R, Höhe %2 R</translation>
        </message>
        <message>
            <source>As seen along the cue. Dashed: miscue limit. Hollow: missed pots.</source>
            <translation>Entlang des Queues gesehen. Gestrichelt: Abrutschgrenze. Hohl: verfehlte Kugeln.</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>Tempo: verlangt und gespielt</translation>
        </message>
        <message>
            <source>On the dashed line both agree. Hollow: missed pots.</source>
            <translation>Auf der gestrichelten Linie stimmen beide überein. Hohl: verfehlte Kugeln.</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>Wo die Weiße liegen blieb</translation>
        </message>
        <message>
            <source>along the table, + to the foot, mm</source>
            <translation>längs des Tisches, + zum Fuß, mm</translation>
        </message>
        <message>
            <source>across the table, mm</source>
            <translation>quer zum Tisch, mm</translation>
        </message>
        <message>
            <source>%1 mm along, %2 mm across</source>
            <translation>%1 mm längs, %2 mm quer</translation>
        </message>
        <message>
            <source>The middle is where it was asked to rest. Ellipse: 95 of 100 shots.</source>
            <translation>Die Mitte ist, wo sie liegen sollte. Ellipse: 95 von 100 Stößen.</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>Karte der Fehlstöße</translation>
        </message>
        <message>
            <source>%1 thick, %2 thin</source>
            <translation>%1 dick, %2 dünn</translation>
        </message>
        <message>
            <source>too thick, %1, cut %2</source>
            <translation>zu dick, %1, Schnitt %2</translation>
        </message>
        <message>
            <source>too thin, %1, cut %2</source>
            <translation>zu dünn, %1, Schnitt %2</translation>
        </message>
        <message>
            <source>Object balls that were missed, head on the left. Filled: too thick, hollow: too thin. At the pockets: what was missed there.</source>
            <translation>Objektkugeln, die verfehlt wurden, Kopf links. Gefüllt: zu dick, hohl: zu dünn. An den Taschen: was dort verfehlt wurde.</translation>
        </message>
        <message>
            <source>Where nobody said what was meant, the mean of the repeated set-up stands in.</source>
            <translation>Wo niemand sagte, was gemeint war, steht das Mittel der wiederholten Aufstellung.</translation>
        </message>
        <message>
            <source>aim %1°, speed %2</source>
            <translation>Ziel %1°, Tempo %2</translation>
        </message>
        <message>
            <source>asked, %1</source>
            <comment>a unit of speed</comment>
            <translation>verlangt, %1</translation>
        </message>
        <message>
            <source>delivered, %1</source>
            <comment>a unit of speed</comment>
            <translation>gespielt, %1</translation>
        </message>
        <message>
            <source>asked %1, delivered %2</source>
            <comment>two speeds</comment>
            <translation>verlangt %1, gespielt %2</translation>
        </message>
        <message>
            <source>Where nobody said, the leave of the plan stands in that the shot was read as.</source>
            <translation>Wo niemand es sagte, steht der Ruheplatz des Plans, als der der Stoß gelesen wurde.</translation>
        </message>
    </context>
    <context>
        <name>ShotComparison</name>
        <message>
            <source>Aim</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>Stoßpunkt seitl.</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>Stoßpunkt Höhe</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Queueneigung</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>Line error</source>
            <translation>Linienfehler</translation>
        </message>
        <message>
            <source>Cue ball at rest</source>
            <translation>Weiße in Ruhe</translation>
        </message>
        <message>
            <source>%1 apart</source>
            <translation>%1 auseinander</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Ergebnis</translation>
        </message>
    </context>
    <context>
        <name>ShotWords</name>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>%1 vor der Fußbande</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>%1 vor der Kopfbande</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>%1 von links</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>%1 von rechts</translation>
        </message>
        <message>
            <source>the cue ball was hidden</source>
            <translation>die Weiße war verdeckt</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>Stoßpunkt seitl.</translation>
        </message>
        <message>
            <source>nothing that it did shows the spin</source>
            <translation>ihr Lauf verrät den Effet nicht</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>Stoßpunkt Höhe</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Queueneigung</translation>
        </message>
        <message>
            <source>no curve and no hop</source>
            <translation>kein Bogen, kein Hüpfer</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>Schnitt %1</translation>
        </message>
        <message>
            <source>%1 to the ball</source>
            <translation>%1 bis zur Kugel</translation>
        </message>
        <message>
            <source>%1 to the pocket</source>
            <translation>%1 bis zur Tasche</translation>
        </message>
        <message>
            <source>%1 left the pocket's middle by %2</source>
            <translation>%1 lief %2 neben die Taschenmitte</translation>
        </message>
        <message>
            <source>, %1 at the pocket</source>
            <translation>, %1 an der Tasche</translation>
        </message>
        <message>
            <source>: cut too much, thin</source>
            <translation>: zu dünn getroffen</translation>
        </message>
        <message>
            <source>: cut too little, thick</source>
            <translation>: zu dick getroffen</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <comment>ball, along, across</comment>
            <translation>%1: %2, %3</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) did not move.</source>
            <translation>
                <numerusform>%n Kugel blieb liegen.</numerusform>
                <numerusform>%n Kugeln blieben liegen.</numerusform>
            </translation>
        </message>
        <message>
            <source>corrected by hand</source>
            <translation>von Hand berichtigt</translation>
        </message>
        <message>
            <source>Ruled before: %1</source>
            <translation>Zuvor entschieden: %1</translation>
        </message>
        <message>
            <source>To be settled: %1</source>
            <translation>Zu klären: %1</translation>
        </message>
        <message>
            <source>Not a clean reading: %1.</source>
            <translation>Keine saubere Messung: %1.</translation>
        </message>
        <message>
            <source>Ruled before a correction: %1</source>
            <translation>Entschieden vor einer Berichtigung: %1</translation>
        </message>
    </context>
    <context>
        <name>TradeWords</name>
        <message>
            <source>%1 o'clock</source>
            <comment>a place on the ball's face</comment>
            <translation>%1 Uhr</translation>
        </message>
        <message>
            <source>half past twelve</source>
            <translation>halb eins</translation>
        </message>
        <message>
            <source>half past one</source>
            <translation>halb zwei</translation>
        </message>
        <message>
            <source>half past two</source>
            <translation>halb drei</translation>
        </message>
        <message>
            <source>half past three</source>
            <translation>halb vier</translation>
        </message>
        <message>
            <source>half past four</source>
            <translation>halb fünf</translation>
        </message>
        <message>
            <source>half past five</source>
            <translation>halb sechs</translation>
        </message>
        <message>
            <source>half past six</source>
            <translation>halb sieben</translation>
        </message>
        <message>
            <source>half past seven</source>
            <translation>halb acht</translation>
        </message>
        <message>
            <source>half past eight</source>
            <translation>halb neun</translation>
        </message>
        <message>
            <source>half past nine</source>
            <translation>halb zehn</translation>
        </message>
        <message>
            <source>half past ten</source>
            <translation>halb elf</translation>
        </message>
        <message>
            <source>half past eleven</source>
            <translation>halb zwölf</translation>
        </message>
        <message>
            <source>the cue ball</source>
            <translation>die Weiße</translation>
        </message>
        <message>
            <source>the %1</source>
            <comment>an object ball by its number</comment>
            <translation>die %1</translation>
        </message>
        <message>
            <source>The cue ball</source>
            <translation>Die Weiße</translation>
        </message>
        <message>
            <source>The %1</source>
            <comment>an object ball by its number</comment>
            <translation>Die %1</translation>
        </message>
        <message>
            <source>cue</source>
            <comment>cue ball, in a narrow list</comment>
            <translation>Weiße</translation>
        </message>
        <message>
            <source>head-left</source>
            <translation>Kopf links</translation>
        </message>
        <message>
            <source>head-right</source>
            <translation>Kopf rechts</translation>
        </message>
        <message>
            <source>side-left</source>
            <translation>Mitte links</translation>
        </message>
        <message>
            <source>side-right</source>
            <translation>Mitte rechts</translation>
        </message>
        <message>
            <source>foot-left</source>
            <translation>Fuß links</translation>
        </message>
        <message>
            <source>foot-right</source>
            <translation>Fuß rechts</translation>
        </message>
        <message>
            <source>the head cushion</source>
            <translation>die Kopfbande</translation>
        </message>
        <message>
            <source>the foot cushion</source>
            <translation>die Fußbande</translation>
        </message>
        <message>
            <source>the left-head cushion</source>
            <translation>die linke Bande kopfseitig</translation>
        </message>
        <message>
            <source>the left-foot cushion</source>
            <translation>die linke Bande fußseitig</translation>
        </message>
        <message>
            <source>the right-head cushion</source>
            <translation>die rechte Bande kopfseitig</translation>
        </message>
        <message>
            <source>the right-foot cushion</source>
            <translation>die rechte Bande fußseitig</translation>
        </message>
        <message>
            <source>made</source>
            <translation>gelocht</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>verfehlt</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>Sicherheit</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>Scratch</translation>
        </message>
        <message>
            <source>foul</source>
            <translation>Foul</translation>
        </message>
        <message>
            <source>break</source>
            <translation>Anstoß</translation>
        </message>
        <message>
            <source>certain</source>
            <translation>sicher</translation>
        </message>
        <message>
            <source>likely</source>
            <translation>wahrscheinlich</translation>
        </message>
        <message>
            <source>cannot be decided from the film: please check</source>
            <translation>am Film nicht zu entscheiden: bitte prüfen</translation>
        </message>
        <message>
            <source>eight-ball</source>
            <translation>8-Ball</translation>
        </message>
        <message>
            <source>nine-ball</source>
            <translation>9-Ball</translation>
        </message>
        <message>
            <source>ten-ball</source>
            <translation>10-Ball</translation>
        </message>
        <message>
            <source>straight pool</source>
            <translation>14/1 endlos</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>two balls</comment>
            <translation>%1 trifft %2</translation>
        </message>
        <message>
            <source>%1 meets a ball</source>
            <translation>%1 trifft eine Kugel</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>ball and cushion</comment>
            <translation>%1 trifft %2</translation>
        </message>
        <message>
            <source>%1 meets a cushion</source>
            <translation>%1 trifft eine Bande</translation>
        </message>
        <message>
            <source>%1 falls, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1 fällt, %2</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1 fällt</translation>
        </message>
        <message>
            <source>%1 leaves the table</source>
            <translation>%1 verlässt den Tisch</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball and pocket</comment>
            <translation>%1 nach %2</translation>
        </message>
        <message>
            <source>off %1</source>
            <comment>the first ball met</comment>
            <translation>auf %1</translation>
        </message>
        <message>
            <source>no ball met</source>
            <translation>keine Kugel getroffen</translation>
        </message>
        <message>
            <source>thin</source>
            <translation>zu dünn</translation>
        </message>
        <message>
            <source>thick</source>
            <translation>zu dick</translation>
        </message>
        <message>
            <source>Shot %1: the break</source>
            <translation>Stoß %1: der Anstoß</translation>
        </message>
        <message>
            <source>no ball</source>
            <translation>keine Kugel</translation>
        </message>
        <message>
            <source>Shot %1: met %2, %3</source>
            <translation>Stoß %1: traf %2, %3</translation>
        </message>
        <message>
            <source>missed %1</source>
            <comment>thin or thick</comment>
            <translation>verfehlt, %1</translation>
        </message>
        <message>
            <source>Shot %1: %2 to %3, %4</source>
            <translation>Stoß %1: %2 nach %3, %4</translation>
        </message>
        <message>
            <source>Struck at the centre, as far as can be seen.</source>
            <translation>In der Mitte getroffen, soweit erkennbar.</translation>
        </message>
        <message>
            <source>Struck at about %1, %2 from the centre.</source>
            <translation>Etwa auf %1 getroffen, %2 neben der Mitte.</translation>
        </message>
        <message>
            <source>pocketed: %1</source>
            <comment>balls</comment>
            <translation>gelocht: %1</translation>
        </message>
        <message>
            <source>also pocketed: %1</source>
            <comment>balls</comment>
            <translation>auch gelocht: %1</translation>
        </message>
    </context>
    <context>
        <name>ferrule::AboutPage</name>
        <message>
            <source>About Ferrule</source>
            <translation>Über Ferrule</translation>
        </message>
        <message>
            <source>Ferrule %1 turns film of a cue-sports table into measured shots.</source>
            <translation>Ferrule %1 macht aus Filmen eines Billardtischs gemessene Stöße.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Hang a camera or a projector over people only from fixings rated for the load, with a safety tether.</source>
            <translation>Kamera oder Projektor nur an Befestigungen, die die Last tragen, und mit Fangseil über Menschen hängen.</translation>
        </message>
        <message>
            <source>Leave mains work to a licensed electrician; local codes come first.</source>
            <translation>Arbeiten am Stromnetz einer Elektrofachkraft überlassen; örtliche Vorschriften gehen vor.</translation>
        </message>
        <message>
            <source>Never look into the projector's beam, and never let a person lean into it.</source>
            <translation>Nie in den Strahl des Projektors blicken, und niemanden sich hineinlehnen lassen.</translation>
        </message>
        <message>
            <source>Jump shots: protect the eyes and keep the space around the table clear.</source>
            <translation>Sprungstöße: Augen schützen und den Platz um den Tisch frei halten.</translation>
        </message>
        <message>
            <source>Film people, minors above all, only with consent, and as local law allows.</source>
            <translation>Menschen, vor allem Minderjährige, nur mit Einwilligung filmen und wie das örtliche Recht es erlaubt.</translation>
        </message>
        <message>
            <source>The numbers carry their uncertainty: believe no millimetre that the error map does not give.</source>
            <translation>Die Zahlen tragen ihre Unsicherheit: Glauben Sie keinem Millimeter, den die Fehlerkarte nicht hergibt.</translation>
        </message>
        <message>
            <source>Your data</source>
            <translation>Ihre Daten</translation>
        </message>
        <message>
            <source>Everything stays on this computer, in files that only you can read; nothing is sent anywhere.</source>
            <translation>Alles bleibt auf diesem Rechner, in Dateien, die nur Sie lesen können; nichts wird verschickt.</translation>
        </message>
        <message>
            <source>Licence</source>
            <translation>Lizenz</translation>
        </message>
        <message>
            <source>Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
            <translation>Freie Software unter der GNU General Public License, Version 3 oder später. Ohne jede Gewährleistung.</translation>
        </message>
        <message>
            <source>Made with</source>
            <translation>Gemacht mit</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallTray</name>
        <message>
            <source>Balls off the table</source>
            <translation>Kugeln neben dem Tisch</translation>
        </message>
        <message>
            <source>Every ball is on the table.</source>
            <translation>Alle Kugeln liegen auf dem Tisch.</translation>
        </message>
        <message>
            <source>Off the table:</source>
            <translation>Neben dem Tisch:</translation>
        </message>
        <message>
            <source>Put %1 on the table</source>
            <translation>%1 auf den Tisch legen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallsPage</name>
        <message>
            <source>A ball's diameter</source>
            <translation>Durchmesser einer Kugel</translation>
        </message>
        <message>
            <source>&amp;Diameter</source>
            <translation>&amp;Durchmesser</translation>
        </message>
        <message>
            <source>A ball's weight</source>
            <translation>Gewicht einer Kugel</translation>
        </message>
        <message>
            <source> g</source>
            <translation> g</translation>
        </message>
        <message>
            <source>&amp;Weight</source>
            <translation>&amp;Gewicht</translation>
        </message>
        <message>
            <source>Lay five balls in a row against a straight edge and measure from end to end: a fifth of it is the diameter, five times as exact. Balls of the world specification have 57.15 mm and 156 to 170 g.</source>
            <translation>Fünf Kugeln in einer Reihe an eine gerade Kante legen und von Ende zu Ende messen: Ein Fünftel davon ist der Durchmesser, fünfmal so genau. Kugeln nach den Weltregeln haben 57,15 mm und 156 bis 170 g.</translation>
        </message>
        <message>
            <source>the balls' diameter</source>
            <translation>Durchmesser der Kugeln</translation>
        </message>
        <message>
            <source>the balls' weight</source>
            <translation>Gewicht der Kugeln</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraChoice</name>
        <message>
            <source>Camera</source>
            <translation>Kamera</translation>
        </message>
        <message>
            <source>Size and rate of the images</source>
            <translation>Größe und Takt der Bilder</translation>
        </message>
        <message>
            <source>Choose a film that stands in for the camera</source>
            <translation>Film wählen, der die Kamera vertritt</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>Filme (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>A film of this camera, played at its own pace</source>
            <translation>Ein Film dieser Kamera, in seinem Tempo gespielt</translation>
        </message>
        <message>
            <source>Set the camera to a fixed focus and exposure: a whole number of mains periods against flicker, short enough that a fast ball is no streak. What set-up was made with must stay.</source>
            <translation>Stellen Sie Schärfe und Belichtung der Kamera fest ein: gegen Flimmern eine ganze Zahl von Netzperioden, kurz genug, dass eine schnelle Kugel kein Strich wird. Womit eingerichtet wurde, muss bleiben.</translation>
        </message>
        <message>
            <source>The rig was made at %1 × %2; images of another size cannot be measured with it.</source>
            <translation>Der Kamerastandort wurde bei %1 × %2 bestimmt; Bilder anderer Größe lassen sich damit nicht messen.</translation>
        </message>
        <message>
            <source>A film in place of a camera</source>
            <translation>Ein Film anstelle einer Kamera</translation>
        </message>
        <message>
            <source>No camera was found: connect one, or let a film stand in to try it.</source>
            <translation>Keine Kamera gefunden: Schließen Sie eine an, oder lassen Sie zum Ausprobieren einen Film einspringen.</translation>
        </message>
        <message>
            <source>Everything happens as with a camera, also when measuring cannot keep up.</source>
            <translation>Alles geschieht wie mit einer Kamera, auch wenn das Messen nicht nachkommt.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraPage</name>
        <message>
            <source>Such as: wide camera, hall</source>
            <translation>Etwa: Weitwinkelkamera, Saal</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>&amp;Kamera</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Film</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>Bild</translation>
        </message>
        <message>
            <source>Choose a &amp;film or still…</source>
            <translation>&amp;Film oder Standbild wählen…</translation>
        </message>
        <message>
            <source>Fixed focus and exposure, a whole number of mains periods, the highest image rate; stabilisation, zoom and lens correction off. Every later step needs pictures of this size.</source>
            <translation>Fester Fokus und feste Belichtung von einer ganzen Zahl Netzperioden, höchste Bildrate; Bildstabilisierung, Zoom und Objektivkorrektur aus. Alle späteren Schritte brauchen Bilder dieser Größe.</translation>
        </message>
        <message>
            <source>A camera overhead hangs over people: fix it to the building's structure with fittings rated for its load, never to a ceiling tile, and add a steel tether to a second point. Work from a proper ladder with a second person, not from the table, and secure yourself against a fall. Fixed mains wiring is the work of a licensed electrician; lead no cable where people walk. Local codes come first.</source>
            <translation>Eine Kamera über dem Tisch hängt über Menschen: mit für die Last zugelassenen Befestigungen am Bauwerk befestigen, nie an einer Deckenplatte, und mit einem Stahlseil an einem zweiten Punkt sichern. Von einer richtigen Leiter und zu zweit arbeiten, nicht vom Tisch aus, und gegen Absturz sichern. Feste Netzleitungen sind Sache einer Elektrofachkraft; kein Kabel dort, wo Menschen gehen. Örtliche Vorschriften gehen vor.</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>noch keiner</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>noch nicht bekannt</translation>
        </message>
        <message>
            <source>%1 × %2 px</source>
            <translation>%1 × %2 px</translation>
        </message>
        <message>
            <source>%1, %2 images a second</source>
            <translation>%1, %2 Bilder je Sekunde</translation>
        </message>
        <message>
            <source>%1, turned by %2° as its file says</source>
            <translation>%1, laut Datei um %2° gedreht</translation>
        </message>
        <message>
            <source>the camera's name</source>
            <translation>Name der Kamera</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraSource</name>
        <message>
            <source>The camera %1 sends no images (%2). Look at its cable, whether another program uses it, and whether this program may use cameras.</source>
            <translation>Die Kamera %1 sendet keine Bilder (%2). Sehen Sie nach dem Kabel, ob ein anderes Programm sie benutzt und ob dieses Programm Kameras benutzen darf.</translation>
        </message>
        <message>
            <source>The camera %1 is gone; what it saw until then is kept.</source>
            <translation>Die Kamera %1 ist weg; was sie bis dahin sah, bleibt behalten.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ChainRow</name>
        <message>
            <source>then</source>
            <translation>dann</translation>
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
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Everything fits</source>
            <translation>Alles passt</translation>
        </message>
        <message>
            <source>The camera has moved</source>
            <translation>Die Kamera wurde bewegt</translation>
        </message>
        <message>
            <source>Lens of another camera</source>
            <translation>Objektiv einer anderen Kamera</translation>
        </message>
        <message>
            <source>Corrected twice</source>
            <translation>Zweimal korrigiert</translation>
        </message>
        <message>
            <source>Not corrected</source>
            <translation>Nicht korrigiert</translation>
        </message>
        <message>
            <source>Other size of picture</source>
            <translation>Andere Bildgröße</translation>
        </message>
        <message>
            <source>Tags at another height</source>
            <translation>Marken in anderer Höhe</translation>
        </message>
        <message>
            <source>A tag at another place</source>
            <translation>Eine Marke an anderer Stelle</translation>
        </message>
        <message>
            <source>Two tags swapped</source>
            <translation>Zwei Marken vertauscht</translation>
        </message>
        <message>
            <source>A tag turned</source>
            <translation>Eine Marke gedreht</translation>
        </message>
        <message>
            <source>Other size of table</source>
            <translation>Andere Tischgröße</translation>
        </message>
        <message>
            <source>Something does not fit</source>
            <translation>Etwas passt nicht</translation>
        </message>
        <message>
            <source>Every correction between sensor and table, in order</source>
            <translation>Alle Korrekturen zwischen Sensor und Tisch, der Reihe nach</translation>
        </message>
        <message>
            <source>&amp;Check this film</source>
            <translation>Diesen Film &amp;prüfen</translation>
        </message>
        <message>
            <source>Check &amp;another film…</source>
            <translation>&amp;Anderen Film prüfen…</translation>
        </message>
        <message>
            <source>Add a &amp;lens to the chain…</source>
            <translation>&amp;Objektiv in die Kette einfügen…</translation>
        </message>
        <message>
            <source>What the film shows</source>
            <translation>Was der Film zeigt</translation>
        </message>
        <message>
            <source>What else was tried</source>
            <translation>Was sonst erwogen wurde</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>Es gibt noch keinen Film des Tisches; im Schritt Kamera einen wählen.</translation>
        </message>
        <message>
            <source>Add a lens to the chain</source>
            <translation>Objektiv in die Kette einfügen</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>Objektivdateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Not checked yet</source>
            <translation>Noch nicht geprüft</translation>
        </message>
        <message>
            <source>There is no rig yet</source>
            <translation>Es gibt noch keinen Kamerastandort</translation>
        </message>
        <message>
            <source>%1 (sure to %2 %)</source>
            <comment>what the check found, how sure</comment>
            <translation>%1 (zu %2 % sicher)</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by %1 (rms), by %2 at the worst place: %3 toward the foot and %4 to the left of the middle.</source>
            <translation>So wie es ist, liegt der Ort einer Kugel um %1 (quadratisches Mittel) daneben, an der schlechtesten Stelle um %2: %3 zum Fuß hin und %4 links von der Mitte.</translation>
        </message>
        <message>
            <source>%1: probability %2 %, misses what is seen by %3 standard deviations</source>
            <translation>%1: Wahrscheinlichkeit %2 %, weicht vom Gesehenen um %3 Standardabweichungen ab</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CompareView</name>
        <message>
            <source>Plan of the shot that is held</source>
            <translation>Draufsicht des festgehaltenen Stoßes</translation>
        </message>
        <message>
            <source>Plan of the shot that is compared with it</source>
            <translation>Draufsicht des Stoßes, der damit verglichen wird</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Held</source>
            <translation>Festgehalten</translation>
        </message>
        <message>
            <source>Other</source>
            <translation>Anderer</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Unterschied</translation>
        </message>
        <message>
            <source>What differs between the two shots</source>
            <translation>Worin sich die zwei Stöße unterscheiden</translation>
        </message>
        <message>
            <source>Choose the shot that is to be compared.</source>
            <translation>Den Stoß wählen, der verglichen werden soll.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ConsentSection</name>
        <message>
            <source>Filming people, minors above all: ask first, and in writing. For a minor a parent or guardian gives consent before the camera runs; the law where you play may ask for more.</source>
            <translation>Menschen filmen, vor allem Minderjährige: zuerst fragen, und schriftlich. Für Minderjährige willigt ein Elternteil oder Vormund ein, bevor die Kamera läuft; das Recht am Ort kann mehr verlangen.</translation>
        </message>
        <message>
            <source>Who gave or withdrew it</source>
            <translation>Wer sie gegeben oder widerrufen hat</translation>
        </message>
        <message>
            <source>&amp;By</source>
            <translation>&amp;Von</translation>
        </message>
        <message>
            <source>a &amp;parent or guardian</source>
            <translation>ein &amp;Elternteil oder Vormund</translation>
        </message>
        <message>
            <source>From this day on</source>
            <translation>Von diesem Tag an</translation>
        </message>
        <message>
            <source>&amp;On</source>
            <translation>Am</translation>
        </message>
        <message>
            <source>Unti&amp;l</source>
            <translation>&amp;Bis</translation>
        </message>
        <message>
            <source>It ends on a day</source>
            <translation>Sie endet an einem Tag</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Letzter Tag</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Vermerken</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Renew…</source>
            <translation>Erneuern…</translation>
        </message>
        <message>
            <source>Note…</source>
            <translation>Vermerken…</translation>
        </message>
        <message>
            <source>Note consent: %1</source>
            <translation>Einwilligung vermerken: %1</translation>
        </message>
        <message>
            <source>Withdraw…</source>
            <translation>Widerrufen…</translation>
        </message>
        <message>
            <source>Withdraw consent: %1</source>
            <translation>Einwilligung widerrufen: %1</translation>
        </message>
        <message>
            <source>Consent given: %1</source>
            <translation>Einwilligung gegeben: %1</translation>
        </message>
        <message>
            <source>Consent withdrawn: %1</source>
            <translation>Einwilligung widerrufen: %1</translation>
        </message>
        <message>
            <source>Name of the parent or guardian</source>
            <translation>Name des Elternteils oder Vormunds</translation>
        </message>
        <message>
            <source>Say who gave or withdrew consent.</source>
            <translation>Sagen Sie, wer die Einwilligung gegeben oder widerrufen hat.</translation>
        </message>
        <message>
            <source>The consent would end before it begins; choose a later last day.</source>
            <translation>Die Einwilligung würde enden, bevor sie beginnt; wählen Sie einen späteren letzten Tag.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CoverageView</name>
        <message>
            <source>The board was seen in %1 % of the picture</source>
            <translation>Die Tafel war in %1 % des Bildes zu sehen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DetailPanel</name>
        <message>
            <source>Left and right exchanged</source>
            <translation>Links und rechts vertauscht</translation>
        </message>
        <message>
            <source>Head and foot exchanged</source>
            <translation>Kopf und Fuß vertauscht</translation>
        </message>
        <message>
            <source>Spread the balls anew</source>
            <translation>Kugeln neu verteilen</translation>
        </message>
        <message>
            <source>Whose run it is; may stay empty</source>
            <translation>Wessen Durchgang es ist; darf leer bleiben</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>&amp;Spieler</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>Eine übliche Größe oder der Pfad einer Tischdatei</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Tisch</translation>
        </message>
        <message>
            <source>Begin a run</source>
            <translation>Durchgang beginnen</translation>
        </message>
        <message>
            <source>Or find the tries in a session that was recorded:</source>
            <translation>Oder die Versuche in einer aufgezeichneten Sitzung finden:</translation>
        </message>
        <message>
            <source>Recorded session</source>
            <translation>Aufgezeichnete Sitzung</translation>
        </message>
        <message>
            <source>Count its tries</source>
            <translation>Versuche zählen</translation>
        </message>
        <message>
            <source>Edit</source>
            <translation>Bearbeiten</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Löschen</translation>
        </message>
        <message>
            <source>Its runs stay; undo brings it back</source>
            <translation>Ihre Durchgänge bleiben; Rückgängig holt sie zurück</translation>
        </message>
        <message>
            <source>Copy and change</source>
            <translation>Kopieren und ändern</translation>
        </message>
        <message>
            <source>Export…</source>
            <translation>Exportieren…</translation>
        </message>
        <message>
            <source>A try counts when: %1; %2 tries.</source>
            <translation>Ein Versuch zählt, wenn: %1; %2 Versuche.</translation>
        </message>
        <message>
            <source>Cue ball in hand.</source>
            <translation>Weiße in der Hand.</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>Versuche, die jedes Ziel erreichten</translation>
        </message>
        <message>
            <source>No run yet: how the tries come out over the weeks will stand here.</source>
            <translation>Noch kein Durchgang: hier wird stehen, wie die Versuche über die Wochen ausgehen.</translation>
        </message>
        <message>
            <source>Not enough yet: %1 of %2 tries.</source>
            <translation>Noch zu wenig: %1 von %2 Versuchen.</translation>
        </message>
        <message>
            <source>Best run: %1, %2.</source>
            <translation>Bester Durchgang: %1, %2.</translation>
        </message>
        <message>
            <source>Count on while it is played</source>
            <translation>Weiterzählen, während gespielt wird</translation>
        </message>
        <message>
            <source>For a session that is live or being measured from a film</source>
            <translation>Für eine Sitzung, die läuft oder gerade aus einem Film gemessen wird</translation>
        </message>
        <message>
            <source>Go on with the last run (%1 of %2)</source>
            <translation>Letzten Durchgang fortsetzen (%1 von %2)</translation>
        </message>
        <message>
            <source>All runs together: %1, between %2 and %3, of %4 tries.</source>
            <translation>Alle Runden zusammen: %1, zwischen %2 und %3, aus %4 Versuchen.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillPicture</name>
        <message>
            <source>Set-up; in a run a click or the arrow keys put where the cue ball came to rest</source>
            <translation>Aufstellung; im Durchgang legt ein Klick oder legen die Pfeiltasten fest, wo die Weiße liegen blieb</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillsPlace</name>
        <message>
            <source>Drills</source>
            <translation>Übungen</translation>
        </message>
        <message>
            <source>No shot of this session was played from the set-up of this drill.</source>
            <translation>Kein Stoß dieser Sitzung wurde aus der Aufstellung dieser Übung gespielt.</translation>
        </message>
        <message numerus="yes">
            <source>%n try(s) counted: %1</source>
            <translation>
                <numerusform>%n Versuch gezählt: %1</numerusform>
                <numerusform>%n Versuche gezählt: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Deleted; undo brings it back. Its runs stay.</source>
            <translation>Gelöscht; Rückgängig holt sie zurück. Ihre Durchgänge bleiben.</translation>
        </message>
        <message>
            <source>%1, my own</source>
            <translation>%1, meine</translation>
        </message>
        <message>
            <source>Find a drill</source>
            <translation>Übung suchen</translation>
        </message>
        <message>
            <source>Kind of drill</source>
            <translation>Art der Übung</translation>
        </message>
        <message>
            <source>Import…</source>
            <translation>Importieren…</translation>
        </message>
        <message>
            <source>Take over the drills of a file</source>
            <translation>Die Übungen einer Datei übernehmen</translation>
        </message>
        <message>
            <source>New drill</source>
            <translation>Neue Übung</translation>
        </message>
        <message>
            <source>My drill</source>
            <translation>Meine Übung</translation>
        </message>
        <message>
            <source>Set-up of the drill</source>
            <translation>Aufstellung der Übung</translation>
        </message>
        <message>
            <source>All drills</source>
            <translation>Alle Übungen</translation>
        </message>
        <message>
            <source>Set-up %1</source>
            <translation>Aufstellung %1</translation>
        </message>
        <message>
            <source>Import drills</source>
            <translation>Übungen importieren</translation>
        </message>
        <message>
            <source>Drills (*.json);;All files (*)</source>
            <translation>Übungen (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Nothing of %1 was taken over: in "%2" %3</source>
            <translation>Aus %1 wurde nichts übernommen: in „%2“ %3</translation>
        </message>
        <message numerus="yes">
            <source>%n drill(s) taken over.</source>
            <translation>
                <numerusform>%n Übung übernommen.</numerusform>
                <numerusform>%n Übungen übernommen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Export the drill</source>
            <translation>Die Übung exportieren</translation>
        </message>
        <message>
            <source>Written to %1.</source>
            <translation>Nach %1 geschrieben.</translation>
        </message>
        <message>
            <source>Project this set-up</source>
            <translation>Diese Aufstellung projizieren</translation>
        </message>
        <message>
            <source>Show on the cloth where the balls belong and where they are to rest</source>
            <translation>Auf dem Tuch zeigen, wohin die Kugeln gehören und wo sie liegen bleiben sollen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::EditorPanel</name>
        <message>
            <source>Keep the drill</source>
            <translation>Übung behalten</translation>
        </message>
        <message>
            <source>Do not keep</source>
            <translation>Nicht behalten</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>What it is f&amp;or</source>
            <translation>&amp;Wozu sie dient</translation>
        </message>
        <message>
            <source>Words with commas</source>
            <translation>Wörter mit Kommas</translation>
        </message>
        <message>
            <source>&amp;Kinds</source>
            <translation>&amp;Arten</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>Lochen</translation>
        </message>
        <message>
            <source>Pot and leave</source>
            <translation>Lochen und Stellung</translation>
        </message>
        <message>
            <source>Leave alone</source>
            <translation>Nur Stellung</translation>
        </message>
        <message>
            <source>Hit and hide</source>
            <translation>Treffen und verstecken</translation>
        </message>
        <message>
            <source>Clear the table</source>
            <translation>Tisch räumen</translation>
        </message>
        <message>
            <source>As it is</source>
            <translation>Wie es ist</translation>
        </message>
        <message>
            <source>&amp;Asked</source>
            <translation>&amp;Verlangt</translation>
        </message>
        <message>
            <source>&amp;Tries</source>
            <translation>Versu&amp;che</translation>
        </message>
        <message>
            <source>&amp;Zone's radius</source>
            <translation>Radius der &amp;Zone</translation>
        </message>
        <message>
            <source>A jump shot: show the caution</source>
            <translation>Ein Sprungstoß: Warnung zeigen</translation>
        </message>
        <message>
            <source>Means the same from the other end</source>
            <translation>Vom anderen Ende dasselbe</translation>
        </message>
        <message>
            <source>Ball</source>
            <translation>Kugel</translation>
        </message>
        <message>
            <source>Put it on the table</source>
            <translation>Auf den Tisch legen</translation>
        </message>
        <message>
            <source>One set-up more</source>
            <translation>Weitere Aufstellung</translation>
        </message>
        <message>
            <source>Remove this set-up</source>
            <translation>Aufstellung entfernen</translation>
        </message>
        <message>
            <source>Set-ups in turn, try by try</source>
            <translation>Aufstellungen reihum</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErasePanel</name>
        <message>
            <source>Erasing takes a player out of the record for good, with everything that is kept of the player. Export the player first if anything may be needed again.</source>
            <translation>Löschen nimmt einen Spieler endgültig aus der Aufzeichnung, mit allem, was von ihm behalten wird. Exportieren Sie ihn vorher, wenn etwas noch gebraucht werden kann.</translation>
        </message>
        <message>
            <source>Show what would go…</source>
            <translation>Zeigen, was verschwände…</translation>
        </message>
        <message>
            <source>What goes and what stays</source>
            <translation>Was verschwindet und was bleibt</translation>
        </message>
        <message>
            <source>Take the name out of others' texts</source>
            <translation>Den Namen aus den Texten anderer nehmen</translation>
        </message>
        <message>
            <source>Delete the films of this player alone</source>
            <translation>Die Filme dieses Spielers allein löschen</translation>
        </message>
        <message>
            <source>Delete the older copies</source>
            <translation>Die älteren Kopien löschen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Erase for good</source>
            <translation>Endgültig löschen</translation>
        </message>
        <message>
            <source>Erase %1 for good</source>
            <translation>%1 endgültig löschen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErrorMapView</name>
        <message>
            <source>How far a ball may be off, over the table</source>
            <translation>Wie weit eine Kugel daneben liegen kann, über den Tisch</translation>
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
            <translation>Abstoß</translation>
        </message>
        <message>
            <source>Every ball rests</source>
            <translation>Alle Kugeln ruhen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmPage</name>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>Im &amp;Rückblick ansehen</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>&amp;Andere Sitzung</translation>
        </message>
        <message>
            <source>Film and rig belong together (sure to %1 %).</source>
            <translation>Film und Kamerastandort gehören zusammen (zu %1 % sicher).</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmView</name>
        <message>
            <source>Film</source>
            <translation>Film</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilterBar</name>
        <message>
            <source>Player</source>
            <translation>Spieler</translation>
        </message>
        <message>
            <source>Period</source>
            <translation>Zeitraum</translation>
        </message>
        <message>
            <source>All time</source>
            <translation>Gesamte Zeit</translation>
        </message>
        <message>
            <source>Last 30 days</source>
            <translation>Letzte 30 Tage</translation>
        </message>
        <message>
            <source>Last 90 days</source>
            <translation>Letzte 90 Tage</translation>
        </message>
        <message>
            <source>This month</source>
            <translation>Dieser Monat</translation>
        </message>
        <message>
            <source>Last month</source>
            <translation>Voriger Monat</translation>
        </message>
        <message>
            <source>From day to day</source>
            <translation>Von Tag bis Tag</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Erster Tag</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Letzter Tag</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>Spiel</translation>
        </message>
        <message>
            <source>Practice or match</source>
            <translation>Training oder Match</translation>
        </message>
        <message>
            <source>Practice and matches</source>
            <translation>Training und Wettkämpfe</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Training</translation>
        </message>
        <message>
            <source>Lessons</source>
            <translation>Unterricht</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>Jeder Tisch</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>Jedes Spiel</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>Übung</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>Tasche</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>Jede Tasche</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>Way of the cue ball</source>
            <translation>Weg der Weißen</translation>
        </message>
        <message>
            <source>With and without drills</source>
            <translation>Mit und ohne Übungen</translation>
        </message>
        <message>
            <source>Cut %1 to %2</source>
            <comment>two angles</comment>
            <translation>Schnitt %1 bis %2</translation>
        </message>
        <message>
            <source>Every cut</source>
            <translation>Jeder Schnitt</translation>
        </message>
        <message>
            <source>Shorter than %1 widths</source>
            <translation>Kürzer als %1 Tischbreiten</translation>
        </message>
        <message>
            <source>%1 to %2 widths</source>
            <translation>%1 bis %2 Tischbreiten</translation>
        </message>
        <message>
            <source>Longer than %1 widths</source>
            <translation>Länger als %1 Tischbreiten</translation>
        </message>
        <message>
            <source>Every distance</source>
            <translation>Jede Entfernung</translation>
        </message>
        <message>
            <source>Opponent</source>
            <translation>Gegner</translation>
        </message>
        <message>
            <source>Every opponent</source>
            <translation>Jeder Gegner</translation>
        </message>
        <message>
            <source>Matches</source>
            <translation>Wettkämpfe</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FirstPicture</name>
        <message>
            <source>The film's first picture</source>
            <translation>Das erste Bild des Films</translation>
        </message>
        <message>
            <source>No film yet</source>
            <translation>Noch kein Film</translation>
        </message>
        <message>
            <source>A film or still of the table</source>
            <translation>Ein Film oder Standbild des Tisches</translation>
        </message>
        <message>
            <source>Films and stills (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;All files (*)</source>
            <translation>Filme und Standbilder (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;Alle Dateien (*)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::GuestBar</name>
        <message>
            <source>Who the guest was</source>
            <translation>Wer der Gast war</translation>
        </message>
        <message>
            <source>A player's name, known or new</source>
            <translation>Name eines Spielers, bekannt oder neu</translation>
        </message>
        <message>
            <source>That is who</source>
            <translation>Das war er oder sie</translation>
        </message>
        <message>
            <source>Stays a guest</source>
            <translation>Bleibt Gast</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>Zurücknehmen</translation>
        </message>
        <message>
            <source>What %1 played is now %2's.</source>
            <comment>a guest, a player</comment>
            <translation>Was %1 gespielt hat, gehört jetzt %2.</translation>
        </message>
        <message>
            <source>%1 and the guest played together, so they are two.</source>
            <translation>%1 und der Gast haben zusammen gespielt, sind also zwei.</translation>
        </message>
        <message>
            <source>A session that is not ended knows the guest: end it first.</source>
            <translation>Eine nicht beendete Sitzung kennt den Gast: Beenden Sie sie erst.</translation>
        </message>
        <message>
            <source>Who was %1?</source>
            <comment>a guest</comment>
            <translation>Wer war %1?</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeepPage</name>
        <message>
            <source>This set-up</source>
            <translation>Diese Einrichtung</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>In Gebrauch</translation>
        </message>
        <message>
            <source>&amp;Save into a folder…</source>
            <translation>In einem Ordner &amp;speichern…</translation>
        </message>
        <message>
            <source>&amp;Check again with a film…</source>
            <translation>Mit einem Film erneut &amp;prüfen…</translation>
        </message>
        <message>
            <source>Start a &amp;new set-up</source>
            <translation>&amp;Neue Einrichtung beginnen</translation>
        </message>
        <message>
            <source>table.json, lens.json and rig.json are written. Check again after another day, another film, or a ladder against the camera: it takes less than a minute.</source>
            <translation>Geschrieben werden table.json, lens.json und rig.json. Erneut prüfen an einem anderen Tag, bei einem anderen Film oder wenn eine Leiter an die Kamera stieß: Es dauert weniger als eine Minute.</translation>
        </message>
        <message>
            <source>Look at every fixing again twice a year. A loose bracket, a hot smell or a rig that wanders means: power off, and nobody plays under it. A projector hangs by the same rules as a camera; never look into its beam, and switch it to black when somebody bends over the table. Local codes come first.</source>
            <translation>Jede Befestigung zweimal im Jahr ansehen. Ein lockerer Halter, heißer Geruch oder ein wandernder Kamerastandort heißt: Strom aus, und niemand spielt darunter. Für einen Projektor gilt dasselbe wie für die Kamera; nie in seinen Strahl sehen und ihn auf Schwarz schalten, wenn sich jemand über den Tisch beugt. Örtliche Vorschriften gehen vor.</translation>
        </message>
        <message>
            <source>Save the set-up into a folder</source>
            <translation>Einrichtung in einem Ordner speichern</translation>
        </message>
        <message>
            <source>Start a new set-up</source>
            <translation>Neue Einrichtung beginnen</translation>
        </message>
        <message>
            <source>What was put in for this one is forgotten; files that were saved into a folder stay. Start a new set-up?</source>
            <translation>Die Eingaben zu dieser werden vergessen; in einem Ordner gespeicherte Dateien bleiben. Neue Einrichtung beginnen?</translation>
        </message>
        <message>
            <source>not saved yet</source>
            <translation>noch nicht gespeichert</translation>
        </message>
        <message>
            <source>no rig yet</source>
            <translation>noch kein Kamerastandort</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>noch keiner</translation>
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
            <translation>Tasten</translation>
        </message>
        <message>
            <source>Wheel: enlarge. Drag: move, or scrub on the time line. Double click: whole table.</source>
            <translation>Rad: vergrößern. Ziehen: verschieben, auf der Zeitleiste spulen. Doppelklick: ganzer Tisch.</translation>
        </message>
        <message>
            <source>Menu</source>
            <translation>Menü</translation>
        </message>
        <message>
            <source>Action</source>
            <translation>Befehl</translation>
        </message>
        <message>
            <source>What it does</source>
            <translation>Was er tut</translation>
        </message>
        <message>
            <source>Find an action</source>
            <translation>Einen Befehl finden</translation>
        </message>
        <message>
            <source>Find: a word, or a key such as Ctrl</source>
            <translation>Finden: ein Wort, oder eine Taste wie Strg</translation>
        </message>
    </context>
    <context>
        <name>ferrule::Legend</name>
        <message>
            <source>taken</source>
            <comment>the shot as it was played</comment>
            <translation>gespielt</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>the shot that was ranked first</comment>
            <translation>vorgeschlagen</translation>
        </message>
        <message>
            <source>Solid: the way as it was measured, filled: where the taken shot would leave the cue ball. Dashed: the suggested shot, hatched: its leave. Dotted: predicted while the ball was hidden. Dot: a contact.</source>
            <translation>Durchgezogen: der gemessene Weg, gefüllt: wo der gespielte Stoß die Weiße erwarten ließ. Gestrichelt: der vorgeschlagene Stoß, schraffiert: seine Ablage. Gepunktet: vorhergesagt, solange die Kugel verdeckt war. Punkt: eine Berührung.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LensPage</name>
        <message>
            <source>&amp;No board: take the lens from the straightness of the cushions</source>
            <translation>Kei&amp;ne Tafel: Objektiv aus der Geradheit der Banden bestimmen</translation>
        </message>
        <message>
            <source>Parameter</source>
            <translation>Parameter</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>The lens's parameters</source>
            <translation>Die Parameter des Objektivs</translation>
        </message>
        <message>
            <source>ChArUco: squares with markers</source>
            <translation>ChArUco: Felder mit Marken</translation>
        </message>
        <message>
            <source>Plain chessboard</source>
            <translation>Einfaches Schachbrett</translation>
        </message>
        <message>
            <source>&amp;Board</source>
            <translation>&amp;Tafel</translation>
        </message>
        <message>
            <source>Columns of the board</source>
            <translation>Spalten der Tafel</translation>
        </message>
        <message>
            <source>Rows of the board</source>
            <translation>Zeilen der Tafel</translation>
        </message>
        <message>
            <source>Side of a square</source>
            <translation>Seite eines Feldes</translation>
        </message>
        <message>
            <source>Side of a marker</source>
            <translation>Seite einer Marke</translation>
        </message>
        <message>
            <source>Set of markers</source>
            <translation>Satz der Marken</translation>
        </message>
        <message>
            <source>squares of</source>
            <translation>Felder zu</translation>
        </message>
        <message>
            <source>inner corners, squares of</source>
            <translation>innere Ecken, Felder zu</translation>
        </message>
        <message>
            <source>Counts</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Letter</translation>
        </message>
        <message>
            <source>Tabloid</source>
            <translation>Tabloid</translation>
        </message>
        <message>
            <source>Make the &amp;sheet (PDF)…</source>
            <translation>&amp;Blatt machen (PDF)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Druck</translation>
        </message>
        <message>
            <source>The line across, as it measures on the paper</source>
            <translation>Die Linie quer, wie sie auf dem Papier misst</translation>
        </message>
        <message>
            <source>The line down, as it measures on the paper</source>
            <translation>Die Linie hoch, wie sie auf dem Papier misst</translation>
        </message>
        <message>
            <source>across,</source>
            <translation>quer,</translation>
        </message>
        <message>
            <source>down; 100 mm when the printer is true</source>
            <translation>hoch; 100 mm, wenn der Drucker stimmt</translation>
        </message>
        <message>
            <source>Lines on it</source>
            <translation>Linien darauf</translation>
        </message>
        <message>
            <source>Glue the print to something flat. Take 15 to 30 sharp stills that together fill the picture to its corners, the board tilted in many of them. Drop files or a folder here.</source>
            <translation>Den Druck auf etwas Ebenes kleben. 15 bis 30 scharfe Standbilder aufnehmen, die zusammen das Bild bis in die Ecken füllen, die Tafel in vielen gekippt. Dateien oder einen Ordner hierher ziehen.</translation>
        </message>
        <message>
            <source>&amp;Add stills…</source>
            <translation>Standbilder &amp;hinzufügen…</translation>
        </message>
        <message>
            <source>Add a fol&amp;der…</source>
            <translation>&amp;Ordner hinzufügen…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Entfernen</translation>
        </message>
        <message>
            <source>&amp;Calibrate</source>
            <translation>&amp;Kalibrieren</translation>
        </message>
        <message>
            <source>&amp;Use a lens file…</source>
            <translation>Objektiv&amp;datei benutzen…</translation>
        </message>
        <message>
            <source>Still</source>
            <translation>Standbild</translation>
        </message>
        <message>
            <source>Board</source>
            <translation>Tafel</translation>
        </message>
        <message>
            <source>Edges</source>
            <translation>Kanten</translation>
        </message>
        <message>
            <source>rms</source>
            <translation>rms</translation>
        </message>
        <message>
            <source>Stills of the board</source>
            <translation>Standbilder der Tafel</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;All files (*)</source>
            <translation>Bilder (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>A folder of stills</source>
            <translation>Ein Ordner mit Standbildern</translation>
        </message>
        <message>
            <source>Use a lens file</source>
            <translation>Objektivdatei benutzen</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>Objektivdateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>Blatt machen</translation>
        </message>
        <message>
            <source>board.pdf</source>
            <translation>tafel.pdf</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The board is in %1; print it at 100 % and measure its lines.</source>
            <translation>Die Tafel ist in %1; mit 100 % drucken und die Linien nachmessen.</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>found, but does not fit the others</source>
            <translation>gefunden, passt aber nicht zu den anderen</translation>
        </message>
        <message>
            <source>How wide the squares' edges are; less than 1 px is sharp</source>
            <translation>Wie breit die Kanten der Felder sind; unter 1 px ist scharf</translation>
        </message>
        <message>
            <source>Where the board was in the picture; hatched: nowhere yet.</source>
            <translation>Wo die Tafel im Bild war; schraffiert: noch nirgends.</translation>
        </message>
        <message numerus="yes">
            <source>%n still(s) used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</source>
            <translation>
                <numerusform>%n Standbild benutzt; die Tafel war in %1 % des Bildes, bis auf %2 % des Weges zu seinen Ecken.</numerusform>
                <numerusform>%n Standbilder benutzt; die Tafel war in %1 % des Bildes, bis auf %2 % des Weges zu seinen Ecken.</numerusform>
            </translation>
        </message>
        <message>
            <source>The lens will come from the cushions with the rig; a board would make places several millimetres better.</source>
            <translation>Das Objektiv ergibt sich mit dem Kamerastandort aus den Banden; eine Tafel würde Orte um mehrere Millimeter verbessern.</translation>
        </message>
        <message>
            <source>Lens of %1 at %2 × %3 px, %4, rms %5 px.</source>
            <translation>Objektiv von %1 bei %2 × %3 px, %4, rms %5 px.</translation>
        </message>
        <message>
            <source>No lens yet.</source>
            <translation>Noch kein Objektiv.</translation>
        </message>
        <message>
            <source>without a board</source>
            <translation>ohne Tafel</translation>
        </message>
        <message>
            <source>the lines on the print</source>
            <translation>Linien auf dem Ausdruck</translation>
        </message>
        <message>
            <source>the board</source>
            <translation>Tafel</translation>
        </message>
        <message>
            <source>Markers</source>
            <translation>Marken</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesList</name>
        <message>
            <source>Noses, sights and pockets, and how far each is off</source>
            <translation>Nasen, Diamanten und Taschen, und wie weit jede Stelle abweicht</translation>
        </message>
        <message>
            <source>Nose, sight or pocket</source>
            <translation>Nase, Diamant oder Tasche</translation>
        </message>
        <message>
            <source>Known from</source>
            <translation>Bekannt aus</translation>
        </message>
        <message>
            <source>Off by</source>
            <translation>Weicht ab um</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>by hand</source>
            <translation>von Hand</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>nicht gefunden</translation>
        </message>
        <message>
            <source>the picture</source>
            <translation>dem Bild</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>nicht da</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesPanel</name>
        <message>
            <source>Look at the &amp;lines, adjust them by hand…</source>
            <translation>&amp;Linien ansehen und von Hand berichtigen…</translation>
        </message>
        <message>
            <source>&amp;As they were found</source>
            <translation>&amp;Wie sie gefunden wurden</translation>
        </message>
        <message>
            <source>The sight or pocket counts where it shows (insert)</source>
            <translation>Der Diamant oder die Tasche zählt, wo sie angezeigt ist (Einfügen)</translation>
        </message>
        <message>
            <source>The sight or pocket no longer counts (delete)</source>
            <translation>Der Diamant oder die Tasche zählt nicht mehr (Entfernen)</translation>
        </message>
        <message>
            <source>the lines as found</source>
            <translation>Linien wie gefunden</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a cushion</comment>
            <translation>%1 von Hand gesetzt</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>%1 von Hand gesetzt</translation>
        </message>
        <message>
            <source>%1 is not there</source>
            <comment>a sight or pocket</comment>
            <translation>%1 ist nicht da</translation>
        </message>
        <message>
            <source>&amp;Look for them again</source>
            <translation>Noch einma&amp;l suchen</translation>
        </message>
        <message>
            <source>The rig is made from the noses of the cushions, the sights and the pockets, as the picture shows them; where one is missed or mistaken, place it by hand.</source>
            <translation>Der Kamerastandort wird aus den Nasen der Banden, den Diamanten und den Taschen bestimmt, wie das Bild sie zeigt; wo etwas fehlt oder verwechselt ist, von Hand setzen.</translation>
        </message>
        <message numerus="yes">
            <source>%n place(s) are set by hand.</source>
            <translation>
                <numerusform>%n Stelle ist von Hand gesetzt.</numerusform>
                <numerusform>%n Stellen sind von Hand gesetzt.</numerusform>
            </translation>
        </message>
        <message>
            <source>Drag a nose's handles to where its cloth ends above the bed, spread from end to end and a hand's breadth from the pockets; drag a sight's diamond onto its middle, a pocket's ring onto the middle of its opening. Arrow keys move what is chosen, page up and page down go from one to the next.</source>
            <translation>Die Griffe einer Nase dorthin ziehen, wo ihr Tuch über der Spielfläche endet, von Ende zu Ende verteilt und eine Handbreit von den Taschen; die Raute eines Diamanten auf seine Mitte, den Ring einer Tasche auf die Mitte ihrer Öffnung. Pfeiltasten bewegen das Gewählte, Bild auf und Bild ab gehen von einem zum nächsten.</translation>
        </message>
        <message numerus="yes">
            <source>%n cushion(s) were not found (dashed): place them.</source>
            <translation>
                <numerusform>%n Bande wurde nicht gefunden (gestrichelt): von Hand setzen.</numerusform>
                <numerusform>%n Banden wurden nicht gefunden (gestrichelt): von Hand setzen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Working out how well they agree…</source>
            <translation>Wird geprüft, wie gut sie zusammenpassen…</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>The noses agree to %1 (rms).</source>
            <translation>Die Nasen stimmen auf %1 (Effektivwert) überein.</translation>
        </message>
        <message numerus="yes">
            <source>%n sight(s) agree to %1 (rms) along their rails; furthest off, by %2, lies %3.</source>
            <translation>
                <numerusform>%n Diamant stimmt längs des Rahmens auf %1 (Effektivwert); am weitesten ab, um %2, liegt %3.</numerusform>
                <numerusform>%n Diamanten stimmen längs der Rahmen auf %1 (Effektivwert); am weitesten ab, um %2, liegt %3.</numerusform>
            </translation>
        </message>
        <message>
            <source>No sight was found; with them, places would be surer.</source>
            <translation>Kein Diamant wurde gefunden; mit ihnen wären die Orte sicherer.</translation>
        </message>
        <message>
            <source>&amp;Count it here</source>
            <translation>&amp;Hier zählen</translation>
        </message>
        <message>
            <source>It is &amp;not there</source>
            <translation>Ist &amp;nicht da</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesView</name>
        <message>
            <source>%1, place %2 of %3</source>
            <comment>a cushion</comment>
            <translation>%1, Stelle %2 von %3</translation>
        </message>
        <message>
            <source>The cushions' noses, the sights and the pockets in the film's picture</source>
            <translation>Die Bandennasen, Diamanten und Taschen im Bild des Films</translation>
        </message>
        <message>
            <source>found</source>
            <comment>a sight or pocket</comment>
            <translation>gefunden</translation>
        </message>
        <message>
            <source>placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>von Hand gesetzt</translation>
        </message>
        <message>
            <source>not there</source>
            <comment>a sight or pocket</comment>
            <translation>nicht da</translation>
        </message>
        <message>
            <source>not found</source>
            <comment>a sight or pocket</comment>
            <translation>nicht gefunden</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LivePage</name>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>Im &amp;Rückblick ansehen</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>&amp;Andere Sitzung</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MainWindow</name>
        <message>
            <source>&amp;Wide list of places</source>
            <translation>Breite Bereich&amp;sleiste</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>Schma&amp;le Bereichsleiste</translation>
        </message>
        <message>
            <source>Se&amp;ttings</source>
            <translation>Einste&amp;llungen</translation>
        </message>
        <message>
            <source>Open a record</source>
            <translation>Aufzeichnung öffnen</translation>
        </message>
        <message>
            <source>Records (*.sqlite);;All files (*)</source>
            <translation>Aufzeichnungen (*.sqlite);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Open &amp;again</source>
            <translation>&amp;Wieder öffnen</translation>
        </message>
        <message>
            <source>No record was opened yet</source>
            <translation>Noch wurde keine Aufzeichnung geöffnet</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>Something is being measured. Choose the language when it is done.</source>
            <translation>Es wird gerade gemessen. Wählen Sie die Sprache, wenn das fertig ist.</translation>
        </message>
        <message>
            <source>Take in another record</source>
            <translation>Weitere Aufzeichnung aufnehmen</translation>
        </message>
        <message>
            <source>Something is being measured. Take the record in when it is done.</source>
            <translation>Es wird gerade gemessen. Nehmen Sie die Aufzeichnung auf, wenn das fertig ist.</translation>
        </message>
        <message>
            <source>Taking in %1…</source>
            <translation>%1 wird aufgenommen…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MapPage</name>
        <message>
            <source>Where the uncertainty comes from, at the marked place</source>
            <translation>Woher die Unsicherheit an der markierten Stelle kommt</translation>
        </message>
        <message>
            <source>Comes from</source>
            <translation>Kommt von</translation>
        </message>
        <message>
            <source>Standard uncertainty</source>
            <translation>Standardunsicherheit</translation>
        </message>
        <message>
            <source>What it is worth in a shot</source>
            <translation>Was es in einem Stoß ausmacht</translation>
        </message>
        <message>
            <source>&amp;Pocket</source>
            <translation>&amp;Tasche</translation>
        </message>
        <message>
            <source>The object ball, toward the foot</source>
            <translation>Die Objektkugel, zum Fuß hin</translation>
        </message>
        <message>
            <source>The object ball, to the left</source>
            <translation>Die Objektkugel, nach links</translation>
        </message>
        <message>
            <source>Object ball &amp;x</source>
            <translation>Objektkugel &amp;x</translation>
        </message>
        <message>
            <source>Object ball &amp;y</source>
            <translation>Objektkugel &amp;y</translation>
        </message>
        <message>
            <source>Cut angle; less than 0: to the right</source>
            <translation>Schnittwinkel; unter 0: nach rechts</translation>
        </message>
        <message>
            <source>&amp;Cut</source>
            <translation>&amp;Schnitt</translation>
        </message>
        <message>
            <source>How far the cue ball rolls before it meets the object ball</source>
            <translation>Wie weit die Weiße rollt, bis sie die Objektkugel trifft</translation>
        </message>
        <message>
            <source>Cue ball a&amp;way</source>
            <translation>Abstan&amp;d der Weißen</translation>
        </message>
        <message>
            <source>Places that are off by so much</source>
            <translation>Orte, die um so viel daneben liegen</translation>
        </message>
        <message>
            <source>If places were &amp;off by</source>
            <translation>Lägen &amp;Orte daneben um</translation>
        </message>
        <message>
            <source>The camera does not see this place.</source>
            <translation>Diese Stelle sieht die Kamera nicht.</translation>
        </message>
        <message>
            <source>There is no rig yet.</source>
            <translation>Es gibt noch keinen Kamerastandort.</translation>
        </message>
        <message>
            <source>At x %1, y %2: within %3 (95 %)</source>
            <translation>Bei x %1, y %2: bis %3 (95 %)</translation>
        </message>
        <message>
            <source>All together</source>
            <translation>Alles zusammen</translation>
        </message>
        <message>
            <source>One of the balls would lie off the table; choose another place, cut or distance.</source>
            <translation>Eine der Kugeln läge neben dem Tisch; anderen Ort, Schnitt oder Abstand wählen.</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <comment>component, its share</comment>
            <translation>%1 %2 %</translation>
        </message>
        <message>
            <source>It comes from: %1. %2</source>
            <translation>Es kommt von: %1. %2</translation>
        </message>
        <message>
            <source>With places so far off the cue ball may miss the object ball altogether.</source>
            <translation>Bei so ungenauen Orten kann die Weiße die Objektkugel ganz verfehlen.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>A ball lies within so many millimetres of its place (95 %)</source>
            <translation>So viele Millimeter liegt eine Kugel höchstens daneben (95 %)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasurePicture</name>
        <message>
            <source>Where to measure the table: from nose to nose, and both diagonals</source>
            <translation>Wo der Tisch gemessen wird: von Bandennase zu Bandennase, und beide Diagonalen</translation>
        </message>
        <message>
            <source>Where to measure the tags: their corners from the table's middle</source>
            <translation>Wo die Marken gemessen werden: ihre Ecken von der Tischmitte aus</translation>
        </message>
        <message>
            <source>length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>diagonal A</source>
            <translation>Diagonale A</translation>
        </message>
        <message>
            <source>diagonal B</source>
            <translation>Diagonale B</translation>
        </message>
        <message>
            <source>head</source>
            <translation>Kopf</translation>
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
            <translation>Tischmitte</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuredShotList</name>
        <message>
            <source>Shots measured so far</source>
            <translation>Bisher gemessene Stöße</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuringPictures</name>
        <message>
            <source>Picture of the film with the balls that were found</source>
            <translation>Bild des Films mit den gefundenen Kugeln</translation>
        </message>
    </context>
    <context>
        <name>ferrule::NoteSection</name>
        <message>
            <source>Notes about this player</source>
            <translation>Notizen zu diesem Spieler</translation>
        </message>
        <message>
            <source>A new note</source>
            <translation>Eine neue Notiz</translation>
        </message>
        <message>
            <source>Who writes</source>
            <translation>Wer schreibt</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Ihr Name</translation>
        </message>
        <message>
            <source>Stands beside notes and consents that you write down</source>
            <translation>Steht bei Notizen und Einwilligungen, die Sie aufschreiben</translation>
        </message>
        <message>
            <source>&amp;Written by</source>
            <translation>&amp;Geschrieben von</translation>
        </message>
        <message>
            <source>Add the note</source>
            <translation>Notiz hinzufügen</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Remove the chosen note</source>
            <translation>Die gewählte Notiz entfernen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PeopleDesk</name>
        <message>
            <source>add %1</source>
            <translation>%1 hinzufügen</translation>
        </message>
        <message>
            <source>%1 has played meanwhile and stays.</source>
            <translation>%1 hat inzwischen gespielt und bleibt.</translation>
        </message>
        <message>
            <source>change %1</source>
            <translation>%1 ändern</translation>
        </message>
        <message>
            <source>rename %1 to %2</source>
            <translation>%1 in %2 umbenennen</translation>
        </message>
        <message>
            <source>note consent of %1</source>
            <translation>Einwilligung von %1 vermerken</translation>
        </message>
        <message>
            <source>withdraw consent of %1</source>
            <translation>Einwilligung von %1 widerrufen</translation>
        </message>
        <message>
            <source>note about %1</source>
            <translation>Notiz zu %1</translation>
        </message>
        <message>
            <source>remove a note about %1</source>
            <translation>eine Notiz zu %1 entfernen</translation>
        </message>
        <message>
            <source>make %1 and %2 one</source>
            <translation>%1 und %2 zu einer Person machen</translation>
        </message>
        <message>
            <source>%1 and %2 played in one session, "%3", so they are two people.</source>
            <translation>%1 und %2 haben in einer Sitzung gespielt, „%3“, also sind sie zwei Personen.</translation>
        </message>
        <message>
            <source>%1 plays in the session that is under way; end it first.</source>
            <translation>%1 spielt in der Sitzung, die im Gange ist; beenden Sie sie zuerst.</translation>
        </message>
        <message>
            <source>%1 plays in a session that is under way; go on with it in Session and end it first.</source>
            <translation>%1 spielt in einer Sitzung, die im Gange ist; setzen Sie sie unter Sitzung fort und beenden Sie sie zuerst.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PersonForm</name>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Playing hand</source>
            <translation>Spielhand</translation>
        </message>
        <message>
            <source>Playing &amp;hand</source>
            <translation>Spiel&amp;hand</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Gruppen</translation>
        </message>
        <message>
            <source>Such as juniors, Tuesday</source>
            <translation>Etwa Jugend, Dienstag</translation>
        </message>
        <message>
            <source>With commas between; a person may be in several</source>
            <translation>Mit Kommas dazwischen; jemand kann in mehreren sein</translation>
        </message>
        <message>
            <source>G&amp;roups</source>
            <translation>G&amp;ruppen</translation>
        </message>
        <message>
            <source>&amp;Minor: a parent or guardian gives consent</source>
            <translation>&amp;Minderjährig: ein Elternteil oder Vormund willigt ein</translation>
        </message>
        <message>
            <source>Minor</source>
            <translation>Minderjährig</translation>
        </message>
        <message>
            <source>G&amp;uest: who it is will be known later</source>
            <translation>G&amp;ast: Wer es ist, wird später bekannt</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>Gast</translation>
        </message>
        <message>
            <source>Who it is</source>
            <translation>Wer es ist</translation>
        </message>
        <message>
            <source>Give over</source>
            <translation>Übergeben</translation>
        </message>
        <message>
            <source>Give all shots to that player</source>
            <translation>Alle Stöße diesem Spieler geben</translation>
        </message>
        <message>
            <source>All shots, sessions, notes and consents go to that player; can be undone</source>
            <translation>Alle Stöße, Sitzungen, Notizen und Einwilligungen gehen an diesen Spieler; kann rückgängig gemacht werden</translation>
        </message>
        <message>
            <source>This &amp;is</source>
            <translation>Das &amp;ist</translation>
        </message>
        <message>
            <source>Same person &amp;as</source>
            <translation>Dieselbe Person &amp;wie</translation>
        </message>
        <message>
            <source>Choose a player</source>
            <translation>Spieler wählen</translation>
        </message>
        <message>
            <source>A player needs a name; the old one stays.</source>
            <translation>Ein Spieler braucht einen Namen; der alte bleibt.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlaceList</name>
        <message>
            <source>Places</source>
            <translation>Bereiche</translation>
        </message>
        <message>
            <source>Show words</source>
            <translation>Beschriftung zeigen</translation>
        </message>
        <message>
            <source>Show icons only</source>
            <translation>Nur Symbole zeigen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlanView</name>
        <message>
            <source>Plan of the table</source>
            <translation>Draufsicht des Tisches</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlayersPlace</name>
        <message>
            <source>Players</source>
            <translation>Spieler</translation>
        </message>
        <message>
            <source>Search for a player or group</source>
            <translation>Spieler oder Gruppe suchen</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Gruppe</translation>
        </message>
        <message>
            <source>Players of the record</source>
            <translation>Spieler der Aufzeichnung</translation>
        </message>
        <message>
            <source>Nobody passes the search and the group.</source>
            <translation>Niemand entspricht der Suche und der Gruppe.</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Einwilligung</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>Choose a player on the left.</source>
            <translation>Wählen Sie links einen Spieler.</translation>
        </message>
        <message>
            <source>Add a player</source>
            <translation>Spieler hinzufügen</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>Gast</translation>
        </message>
        <message>
            <source>New player</source>
            <translation>Neuer Spieler</translation>
        </message>
        <message>
            <source>Nobody is in %1 yet. Add a player first: name, groups and consent; then sessions and films know them by name.</source>
            <translation>In %1 ist noch niemand. Fügen Sie zuerst einen Spieler hinzu: Name, Gruppen und Einwilligung; dann kennen Sitzungen und Filme ihn beim Namen.</translation>
        </message>
        <message>
            <source>Every group</source>
            <translation>Jede Gruppe</translation>
        </message>
        <message>
            <source>Export and erase</source>
            <translation>Exportieren und löschen</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>Geschrieben: %1</translation>
        </message>
        <message>
            <source>Choose the player who is to be exported.</source>
            <translation>Wählen Sie den Spieler, der exportiert werden soll.</translation>
        </message>
        <message>
            <source>Export the player to a folder</source>
            <translation>Den Spieler in einen Ordner exportieren</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProgressPlace</name>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Diagramme</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>In %1 hat noch niemand gespielt. Spielen Sie eine Sitzung mit Namen, oder öffnen Sie eine andere Aufzeichnung.</translation>
        </message>
        <message>
            <source>Co&amp;mpare with</source>
            <translation>&amp;Vergleichen mit</translation>
        </message>
        <message>
            <source>Show two players or two periods side by side</source>
            <translation>Zwei Spieler oder zwei Zeiträume nebeneinander zeigen</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>Woran zu arbeiten ist</translation>
        </message>
        <message>
            <source>What the figures rest on</source>
            <translation>Worauf die Diagramme beruhen</translation>
        </message>
        <message>
            <source>What to work on and what the figures rest on</source>
            <translation>Woran zu arbeiten ist und worauf die Diagramme beruhen</translation>
        </message>
        <message>
            <source>What is pointed at</source>
            <translation>Worauf gezeigt wird</translation>
        </message>
        <message>
            <source>Progress needs shots: play a session, or open a record.</source>
            <translation>Für den Fortschritt braucht es Stöße: Spielen Sie eine Sitzung, oder öffnen Sie eine Aufzeichnung.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Aufzeichnung öffnen…</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection. Choose a longer period.</source>
            <translation>In dieser Auswahl gibt es keinen Stoß dieses Spielers. Wählen Sie einen längeren Zeitraum.</translation>
        </message>
        <message>
            <source>Choose a chart first: click it, or go to it with the Tab key.</source>
            <translation>Wählen Sie zuerst ein Bild: durch Anklicken oder mit der Tabulatortaste.</translation>
        </message>
        <message>
            <source>Export the chart</source>
            <translation>Diagramm exportieren</translation>
        </message>
        <message>
            <source>chart.svg</source>
            <translation>bild.svg</translation>
        </message>
        <message>
            <source>Pictures (*.svg *.png);;Numbers (*.csv)</source>
            <translation>Bilder (*.svg *.png);;Zahlen (*.csv)</translation>
        </message>
        <message>
            <source>The chart is in %1.</source>
            <translation>Das Bild liegt in %1.</translation>
        </message>
        <message>
            <source>Reading the record…</source>
            <translation>Die Aufzeichnung wird gelesen…</translation>
        </message>
        <message>
            <source>Working it out…</source>
            <translation>Es wird gerechnet…</translation>
        </message>
        <message>
            <source>Point at a part of a chart for its numbers; click it for the shots behind it.</source>
            <translation>Zeigen Sie auf einen Teil eines Bildes für seine Zahlen; klicken Sie ihn für die Stöße dahinter an.</translation>
        </message>
        <message>
            <source>Choose a part of a chart first: click it, or go to it with the arrow keys.</source>
            <translation>Wählen Sie zuerst einen Teil eines Bildes: durch Anklicken oder mit den Pfeiltasten.</translation>
        </message>
        <message>
            <source>There is no shot behind this.</source>
            <translation>Dahinter steht kein Stoß.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorDesk</name>
        <message>
            <source>The set-up in use has no projector; find where its light falls in Set-up, step Projector, and save the set-up.</source>
            <translation>Die benutzte Einrichtung hat keinen Projektor; in der Einrichtung, Schritt Projektor, bestimmen, wohin sein Licht fällt, und die Einrichtung speichern.</translation>
        </message>
        <message>
            <source>No screen beside the window's own has the %1 × %2 px that the projector was found with; connect it, or choose its screen in Set-up, step Projector, and find it anew.</source>
            <translation>Kein Bildschirm außer dem des Fensters hat die %1 × %2 px, mit denen der Projektor gefunden wurde; ihn anschließen oder in der Einrichtung, Schritt Projektor, seinen Bildschirm wählen und ihn neu bestimmen.</translation>
        </message>
        <message>
            <source>Never look into the beam; B makes it black, Escape closes it.</source>
            <translation>Nie in den Strahl sehen; B macht ihn schwarz, Escape schließt ihn.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorPage</name>
        <message>
            <source>Never look into the beam, and let nobody bend into it: black is one key away (B). The pictures change in slow fades and nothing blinks; if light that moves troubles somebody, leave it black. A projector over a table needs fixings rated for its weight, a steel tether to a second point, and mains work by a licensed electrician; local codes come first.</source>
            <translation>Nie in den Strahl sehen und niemanden sich hineinbeugen lassen: Schwarz ist eine Taste entfernt (B). Die Bilder wechseln in langsamen Überblendungen und nichts blinkt; wen bewegtes Licht stört, für den bleibt es schwarz. Ein Projektor über einem Tisch braucht für sein Gewicht zugelassene Befestigungen, ein Stahlseil an einem zweiten Punkt und einen Netzanschluss von einer Elektrofachkraft; örtliche Vorschriften gehen vor.</translation>
        </message>
        <message>
            <source>&amp;Screen of the projector</source>
            <translation>&amp;Bildschirm des Projektors</translation>
        </message>
        <message>
            <source>&amp;Black</source>
            <translation>Sch&amp;warz</translation>
        </message>
        <message>
            <source>&amp;Grid of tags</source>
            <translation>&amp;Gitter aus Marken</translation>
        </message>
        <message>
            <source>&amp;Lines and spots of the table</source>
            <translation>&amp;Linien und Punkte des Tisches</translation>
        </message>
        <message>
            <source>Clear the table, darken the room, show the grid and take a still of it with the camera of this rig, in its own picture size.</source>
            <translation>Den Tisch abräumen, den Raum abdunkeln, das Gitter zeigen und mit der Kamera dieses Standorts ein Standbild in deren Bildgröße aufnehmen.</translation>
        </message>
        <message>
            <source>&amp;Find the projector in a still…</source>
            <translation>Projektor in einem Standbild &amp;finden…</translation>
        </message>
        <message>
            <source>A still of the grid on the cloth</source>
            <translation>Ein Standbild des Gitters auf dem Tuch</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg);;All files (*)</source>
            <translation>Bilder (*.png *.jpg *.jpeg);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>%1: %2 × %3 px</source>
            <comment>a screen</comment>
            <translation>%1: %2 × %3 px</translation>
        </message>
        <message>
            <source>It is not known yet where the projector's light falls; show the grid and find it in a still.</source>
            <translation>Noch ist nicht bekannt, wohin das Licht des Projektors fällt; das Gitter zeigen und in einem Standbild finden.</translation>
        </message>
        <message>
            <source>No projector yet; without one this step is not needed.</source>
            <translation>Noch kein Projektor; ohne einen ist dieser Schritt nicht nötig.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Light lies true to %1 (rms) on the cloth, by tags that had no part in it (%2 tags, %3 × %4 px, %5).</source>
            <translation>Licht liegt auf %1 (rms) genau auf dem Tuch, nach Marken, die keinen Anteil daran hatten (%2 Marken, %3 × %4 px, %5).</translation>
        </message>
        <message>
            <source>The projector was found with a picture of %1 × %2 px and this screen has %3 × %4 px; choose its screen, or show the grid again and find it anew.</source>
            <translation>Der Projektor wurde mit einem Bild von %1 × %2 px gefunden und dieser Bildschirm hat %3 × %4 px; seinen Bildschirm wählen oder das Gitter noch einmal zeigen und ihn neu finden.</translation>
        </message>
        <message>
            <source>&amp;Close its screen</source>
            <translation>Bildschirm s&amp;chließen</translation>
        </message>
        <message>
            <source>A &amp;position file…</source>
            <translation>&amp;Positionsdatei…</translation>
        </message>
        <message>
            <source>A position file</source>
            <translation>Eine Positionsdatei</translation>
        </message>
        <message>
            <source>Positions (*.json);;All files (*)</source>
            <translation>Positionen (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>grid of tags</source>
            <translation>Gitter aus Marken</translation>
        </message>
        <message>
            <source>lines and spots</source>
            <translation>Linien und Punkte</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorScreen</name>
        <message>
            <source>Projector</source>
            <translation>Projektor</translation>
        </message>
        <message>
            <source>The projector's picture; Escape closes it, B makes it black</source>
            <translation>Das Bild des Projektors; Escape schließt es, B macht es schwarz</translation>
        </message>
    </context>
    <context>
        <name>ferrule::QuestionPanel</name>
        <message>
            <source>What does %1 choose?</source>
            <comment>a player</comment>
            <translation>Was wählt %1?</translation>
        </message>
        <message>
            <source>Shot %1: %2</source>
            <comment>number, a question</comment>
            <translation>Stoß %1: %2</translation>
        </message>
        <message numerus="yes">
            <source>%n more shot(s) wait for an answer.</source>
            <translation>
                <numerusform>%n weiterer Stoß wartet auf Antwort.</numerusform>
                <numerusform>%n weitere Stöße warten auf Antwort.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::RemarksSection</name>
        <message>
            <source>Add a tag</source>
            <translation>Stichwort hinzufügen</translation>
        </message>
        <message>
            <source>Notes on the shot; Delete takes one away</source>
            <translation>Notizen zum Stoß; Entf nimmt eine weg</translation>
        </message>
        <message>
            <source>Take the note away</source>
            <translation>Notiz wegnehmen</translation>
        </message>
        <message>
            <source>Write a note</source>
            <translation>Notiz schreiben</translation>
        </message>
        <message>
            <source>Who writes and corrects</source>
            <translation>Wer schreibt und berichtigt</translation>
        </message>
        <message>
            <source>Take the tag away: %1</source>
            <translation>Stichwort wegnehmen: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Von</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReportsPlace</name>
        <message>
            <source>Reports</source>
            <translation>Berichte</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>In %1 hat noch niemand gespielt. Spielen Sie eine Sitzung mit Namen, oder öffnen Sie eine andere Aufzeichnung.</translation>
        </message>
        <message>
            <source>The student's language</source>
            <translation>Sprache des Schülers</translation>
        </message>
        <message>
            <source>The student's &amp;language</source>
            <translation>S&amp;prache des Schülers</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Pa&amp;per</source>
            <translation>Pap&amp;ier</translation>
        </message>
        <message>
            <source>A4</source>
            <translation>A4</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Letter</translation>
        </message>
        <message>
            <source>Coach's note</source>
            <translation>Anmerkung des Trainers</translation>
        </message>
        <message>
            <source>Coach's &amp;note</source>
            <translation>&amp;Anmerkung des Trainers</translation>
        </message>
        <message>
            <source>Empty: lines to write on</source>
            <translation>Leer: Linien zum Schreiben</translation>
        </message>
        <message>
            <source>As PDF or HTML to hand out, or its numbers as CSV.</source>
            <translation>Als PDF oder HTML zum Mitgeben, oder die Zahlen als CSV.</translation>
        </message>
        <message>
            <source>A report needs shots: play a session, or open a record.</source>
            <translation>Ein Bericht braucht Stöße: Spielen Sie eine Sitzung, oder öffnen Sie eine Aufzeichnung.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Aufzeichnung öffnen…</translation>
        </message>
        <message>
            <source>There is no report yet.</source>
            <translation>Es gibt noch keinen Bericht.</translation>
        </message>
        <message>
            <source>report-%1.pdf</source>
            <translation>bericht-%1.pdf</translation>
        </message>
        <message>
            <source>Export the report</source>
            <translation>Bericht ausgeben</translation>
        </message>
        <message>
            <source>PDF (*.pdf);;HTML (*.html);;Numbers (*.csv)</source>
            <translation>PDF (*.pdf);;HTML (*.html);;Zahlen (*.csv)</translation>
        </message>
        <message>
            <source>%1 ends in none of .pdf, .html and .csv; name the file so that it does.</source>
            <translation>%1 endet weder auf .pdf noch auf .html oder .csv; nennen Sie die Datei so.</translation>
        </message>
        <message>
            <source>The report is in %1.</source>
            <translation>Der Bericht liegt in %1.</translation>
        </message>
        <message>
            <source>No installed font has these letters, so they print as boxes: %1.</source>
            <translation>Keine installierte Schrift hat diese Buchstaben, daher werden sie als Kästchen gedruckt: %1.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReviewPlace</name>
        <message>
            <source>Review</source>
            <translation>Rückblick</translation>
        </message>
        <message>
            <source>Sessions, frames and shots</source>
            <translation>Sitzungen, Spiele und Stöße</translation>
        </message>
        <message>
            <source>Find the film…</source>
            <translation>Film suchen…</translation>
        </message>
        <message>
            <source>Open a record to look at its shots.</source>
            <translation>Öffnen Sie eine Aufzeichnung, um ihre Stöße anzusehen.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Aufzeichnung öffnen…</translation>
        </message>
        <message>
            <source>Look at the demo</source>
            <translation>Beispiel ansehen</translation>
        </message>
        <message>
            <source>%1 holds no session yet.</source>
            <translation>%1 enthält noch keine Sitzung.</translation>
        </message>
        <message>
            <source>Choose a shot to see its film.</source>
            <translation>Wählen Sie einen Stoß, um seinen Film zu sehen.</translation>
        </message>
        <message>
            <source>This frame was put in by hand: it has no film. The plan shows it.</source>
            <translation>Dieses Spiel wurde von Hand eingegeben und hat keinen Film. Die Draufsicht zeigt es.</translation>
        </message>
        <message>
            <source>%1 The plan still shows what was measured.</source>
            <translation>%1 Die Draufsicht zeigt weiter, was gemessen wurde.</translation>
        </message>
        <message>
            <source>Reading the film…</source>
            <translation>Der Film wird gelesen…</translation>
        </message>
        <message>
            <source>Where is %1?</source>
            <translation>Wo liegt %1?</translation>
        </message>
        <message>
            <source>Films (%1);;All files (*)</source>
            <translation>Filme (%1);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Filter the shots first; the list is then played from the chosen shot on.</source>
            <translation>Filtern Sie zuerst die Stöße; die Liste wird dann ab dem gewählten Stoß gespielt.</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>Trainer</translation>
        </message>
        <message>
            <source>Changed: %1 of shot %2. Undo takes it back.</source>
            <translation>Geändert: %1 von Stoß %2. Rückgängig nimmt es zurück.</translation>
        </message>
        <message>
            <source>shot-%1.png</source>
            <translation>stoss-%1.png</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <translation>Bild speichern</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg)</source>
            <translation>Bilder (*.png *.svg)</translation>
        </message>
        <message>
            <source>The picture is in %1.</source>
            <translation>Das Bild ist in %1.</translation>
        </message>
        <message>
            <source>A ball cannot be taken away here; correct the result when it fell.</source>
            <translation>Hier lässt sich keine Kugel wegnehmen; berichtigen Sie das Ergebnis, wenn sie gefallen ist.</translation>
        </message>
        <message>
            <source>Drag a ball to where it lay before the shot, or choose it with the tab key and move it with the arrow keys. D goes on to where the balls came to rest.</source>
            <translation>Ziehen Sie eine Kugel dorthin, wo sie vor dem Stoß lag, oder wählen Sie sie mit der Tabulatortaste und schieben Sie sie mit den Pfeiltasten. D geht weiter zu den Plätzen nach dem Stoß.</translation>
        </message>
        <message>
            <source>Drag a ball to where it came to rest. D ends.</source>
            <translation>Ziehen Sie eine Kugel dorthin, wo sie liegen blieb. D beendet.</translation>
        </message>
        <message>
            <source>This frame was measured live: nobody kept its film. The plan shows it.</source>
            <translation>Dieses Spiel wurde live gemessen: Sein Film wurde nicht behalten. Die Draufsicht zeigt es.</translation>
        </message>
        <message>
            <source>No guardian's consent to films that are handed on is noted for: %1.</source>
            <translation>Für folgende Minderjährige ist keine Einwilligung der Erziehungsberechtigten in die Weitergabe von Filmen vermerkt: %1.</translation>
        </message>
        <message>
            <source>No consent to films that are handed on is noted for: %1.</source>
            <translation>Keine Einwilligung in die Weitergabe von Filmen ist vermerkt für: %1.</translation>
        </message>
        <message>
            <source>Note it in Players, or save the plan as a clip: it shows nobody.</source>
            <translation>Sie unter Spieler vermerken, oder die Draufsicht als Clip speichern: Sie zeigt niemanden.</translation>
        </message>
        <message numerus="yes">
            <source>The clip is in %1 (%n image(s)).</source>
            <translation>
                <numerusform>Der Clip ist in %1 (%n Bild).</numerusform>
                <numerusform>Der Clip ist in %1 (%n Bilder).</numerusform>
            </translation>
        </message>
        <message>
            <source>Film with the ways drawn over it (*.mp4 *.avi)</source>
            <translation>Film mit den Wegen darüber (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Film alone (*.mp4 *.avi)</source>
            <translation>Film allein (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Plan of the table (*.mp4 *.avi)</source>
            <translation>Draufsicht des Tischs (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Save a clip</source>
            <translation>Clip speichern</translation>
        </message>
        <message>
            <source>shot-%1.mp4</source>
            <translation>stoss-%1.mp4</translation>
        </message>
        <message>
            <source>Shot %1 is held: choose another one to see both side by side. Q ends it.</source>
            <translation>Stoß %1 ist festgehalten: einen anderen wählen, um beide nebeneinander zu sehen. Q beendet es.</translation>
        </message>
        <message>
            <source>Taken back: a change of shot %1.</source>
            <translation>Zurückgenommen: eine Änderung an Stoß %1.</translation>
        </message>
        <message numerus="yes">
            <source>Suggestions worked out anew: %n shot(s).</source>
            <translation>
                <numerusform>Vorschläge neu berechnet: %n Stoß.</numerusform>
                <numerusform>Vorschläge neu berechnet: %n Stöße.</numerusform>
            </translation>
        </message>
        <message>
            <source>Films are played without sound.</source>
            <translation>Filme werden ohne Ton abgespielt.</translation>
        </message>
        <message>
            <source>Films are played with sound.</source>
            <translation>Filme werden mit Ton abgespielt.</translation>
        </message>
        <message>
            <source>Suggestions are worked out anew from what was corrected.</source>
            <translation>Die Vorschläge werden nach der Berichtigung neu berechnet.</translation>
        </message>
        <message>
            <source>The clip is written.</source>
            <translation>Der Clip wird geschrieben.</translation>
        </message>
        <message>
            <source>Pictures (*.png)</source>
            <translation>Bilder (*.png)</translation>
        </message>
        <message>
            <source>Measure the demo film</source>
            <translation>Den Demofilm messen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigChoice</name>
        <message>
            <source>Rig</source>
            <translation>Kamerastandort</translation>
        </message>
        <message>
            <source>Choose a rig file</source>
            <translation>Datei des Kamerastandorts wählen</translation>
        </message>
        <message>
            <source>Rig files (*.json);;All files (*)</source>
            <translation>Kamerastandorte (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>rig.json, from Set-up or calibrate rig</source>
            <translation>rig.json, aus Einrichtung oder calibrate rig</translation>
        </message>
        <message>
            <source>Choose a table file</source>
            <translation>Tischdatei wählen</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>Tischdateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>table.json, or a usual size such as 9ft</source>
            <translation>table.json, oder eine übliche Größe wie 9ft</translation>
        </message>
        <message>
            <source>There is no rig yet. It tells where the camera sits over the table; Set-up makes one from a film or still.</source>
            <translation>Es gibt noch keinen Kamerastandort. Er sagt, wo die Kamera über dem Tisch sitzt; die Einrichtung bestimmt ihn aus einem Film oder einer Aufnahme.</translation>
        </message>
        <message>
            <source>Make one in Set-&amp;up</source>
            <translation>In der &amp;Einrichtung bestimmen</translation>
        </message>
        <message>
            <source>Other files…</source>
            <translation>Andere Dateien…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigPage</name>
        <message>
            <source>&amp;Make the rig</source>
            <translation>Kamerastandort &amp;bestimmen</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Marke</translation>
        </message>
        <message>
            <source>Off in the picture</source>
            <translation>Im Bild daneben</translation>
        </message>
        <message>
            <source>Off on its rail</source>
            <translation>Auf dem Rahmen daneben</translation>
        </message>
        <message>
            <source>Found by the others</source>
            <translation>Von den anderen gefunden</translation>
        </message>
        <message>
            <source>How well each tag agrees</source>
            <translation>Wie gut jede Marke passt</translation>
        </message>
        <message>
            <source>Cushion</source>
            <translation>Bande</translation>
        </message>
        <message>
            <source>Straight to (rms)</source>
            <translation>Gerade auf (rms)</translation>
        </message>
        <message>
            <source>At most</source>
            <translation>Höchstens</translation>
        </message>
        <message>
            <source>How straight each cushion's nose comes out</source>
            <translation>Wie gerade jede Bandennase herauskommt</translation>
        </message>
        <message>
            <source>no film yet</source>
            <translation>noch kein Film</translation>
        </message>
        <message>
            <source>the lens from the cushions</source>
            <translation>dem Objektiv aus den Banden</translation>
        </message>
        <message>
            <source>no lens yet</source>
            <translation>noch kein Objektiv</translation>
        </message>
        <message>
            <source>From %1, with %2 and the tags on the rails.</source>
            <translation>Aus %1, mit %2 und den Marken auf dem Rahmen.</translation>
        </message>
        <message>
            <source>No rig yet.</source>
            <translation>Noch kein Kamerastandort.</translation>
        </message>
        <message>
            <source>The cushions come out bent by up to %1: the lens belongs to another camera, or the film was corrected before. Calibrate the lens of this camera.</source>
            <translation>Die Banden kommen um bis zu %1 gebogen heraus: Das Objektiv gehört zu einer anderen Kamera, oder der Film wurde schon korrigiert. Das Objektiv dieser Kamera kalibrieren.</translation>
        </message>
        <message>
            <source>The cushions come out straight but the tags disagree by %1: measure their places and heights again.</source>
            <translation>Die Banden kommen gerade heraus, aber die Marken widersprechen sich um %1: ihre Orte und Höhen neu messen.</translation>
        </message>
        <message>
            <source>Camera and cushions agree.</source>
            <translation>Kamera und Banden passen zusammen.</translation>
        </message>
        <message>
            <source>The tags agree to %1 (%2 px).</source>
            <translation>Die Marken stimmen auf %1 überein (%2 px).</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>A ball lies within %1 of its place at the middle and within %2 near a corner (95 %).</source>
            <translation>Eine Kugel liegt in der Mitte höchstens %1 daneben, nahe einer Ecke höchstens %2 (95 %).</translation>
        </message>
        <message>
            <source>Four tags and a lens from a board bring this to about 1 mm: some %1 less in the corner.</source>
            <translation>Vier Marken und ein Objektiv von einer Tafel bringen das auf etwa 1 mm: in der Ecke rund %1 weniger.</translation>
        </message>
        <message>
            <source>The camera sits %1 above the cloth, %2 and %3 of the table's middle.</source>
            <translation>Die Kamera sitzt %1 über dem Tuch, von der Tischmitte aus %2 und %3.</translation>
        </message>
        <message>
            <source>%1 toward the foot</source>
            <translation>%1 zum Fuß hin</translation>
        </message>
        <message>
            <source>%1 toward the head</source>
            <translation>%1 zum Kopf hin</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>%1 nach links</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>%1 nach rechts</translation>
        </message>
        <message>
            <source>From %1, with %2, the cushions and the sights.</source>
            <translation>Aus %1, mit %2, den Banden und den Diamanten.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RunPanel</name>
        <message>
            <source>Tries of this run</source>
            <translation>Versuche dieses Durchgangs</translation>
        </message>
        <message>
            <source>Met, missed, or not said; a place put in for the cue ball decides what it can</source>
            <translation>Erreicht, verfehlt oder nicht gesagt; ein eingegebener Platz der Weißen entscheidet, was er kann</translation>
        </message>
        <message>
            <source>Try %1 of %2</source>
            <translation>Versuch %1 von %2</translation>
        </message>
        <message>
            <source>set-up %1</source>
            <translation>Aufstellung %1</translation>
        </message>
        <message>
            <source>Met in full: %1</source>
            <translation>Ganz erreicht: %1</translation>
        </message>
        <message>
            <source>Missed thick %1, thin %2</source>
            <translation>Zu dick %1, zu dünn %2</translation>
        </message>
        <message>
            <source>not all known</source>
            <translation>nicht alles bekannt</translation>
        </message>
        <message>
            <source>met</source>
            <translation>erreicht</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>verfehlt</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionLight</name>
        <message>
            <source>Project the suggestion</source>
            <translation>Vorschlag projizieren</translation>
        </message>
        <message>
            <source>Show the suggested shot on the cloth: its line, and where the cue ball is to rest</source>
            <translation>Den vorgeschlagenen Stoß auf dem Tuch zeigen: seine Linie und wo die Weiße liegen bleiben soll</translation>
        </message>
        <message>
            <source>Project where balls belong</source>
            <translation>Plätze der Kugeln projizieren</translation>
        </message>
        <message>
            <source>After an interruption: show where balls must be put back</source>
            <translation>Nach einer Unterbrechung: zeigen, wohin Kugeln zurückgelegt werden müssen</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>a ball</comment>
            <translation>nicht gesehen</translation>
        </message>
        <message>
            <source>Every ball lies where it belongs.</source>
            <translation>Jede Kugel liegt, wo sie hingehört.</translation>
        </message>
        <message>
            <source>To be put back: %1.</source>
            <comment>balls</comment>
            <translation>Zurückzulegen: %1.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionPlace</name>
        <message>
            <source>Session</source>
            <translation>Sitzung</translation>
        </message>
        <message>
            <source>Shots of this frame</source>
            <translation>Stöße dieses Spiels</translation>
        </message>
        <message>
            <source>Choose the ball that was made and its pocket first.</source>
            <translation>Zuerst die gelochte Kugel und ihre Tasche wählen.</translation>
        </message>
        <message>
            <source>%1, frame %2</source>
            <translation>%1, Spiel %2</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) now stand beside what would have been suggested: see Review.</source>
            <translation>
                <numerusform>%n Stoß steht jetzt neben dem, was vorgeschlagen worden wäre: siehe Rückblick.</numerusform>
                <numerusform>%n Stöße stehen jetzt neben dem, was vorgeschlagen worden wäre: siehe Rückblick.</numerusform>
            </translation>
        </message>
        <message>
            <source>A session is under way: end it before another film is measured.</source>
            <translation>Eine Sitzung läuft: Beenden Sie sie, bevor ein anderer Film gemessen wird.</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) stand where the photo shows them. One look is not sure of the names: check them.</source>
            <translation>
                <numerusform>%n Kugel liegt, wo das Foto sie zeigt. Ein Blick allein ist der Namen nicht sicher: Prüfen Sie sie.</numerusform>
                <numerusform>%n Kugeln liegen, wo das Foto sie zeigt. Ein Blick allein ist der Namen nicht sicher: Prüfen Sie sie.</numerusform>
            </translation>
        </message>
        <message>
            <source>A photo of the table</source>
            <translation>Ein Foto des Tischs</translation>
        </message>
        <message>
            <source>Pictures (*.jpg *.jpeg *.png);;All files (*)</source>
            <translation>Bilder (*.jpg *.jpeg *.png);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>A photo needs the rig of the camera that took it: make one in Set-up first.</source>
            <translation>Ein Foto braucht den Standort der Kamera, die es aufnahm: Bestimmen Sie ihn erst in der Einrichtung.</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>Die Kugeln werden gesucht…</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>Trainer</translation>
        </message>
        <message>
            <source>Put the shot in first; then choose the ball that fell with it, and its pocket.</source>
            <translation>Erst den Stoß eintragen; dann die Kugel wählen, die dabei auch fiel, und ihre Tasche.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetUpSection</name>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>Wählen Sie zuerst eine Kamera oder den Film, der für sie einspringt.</translation>
        </message>
        <message>
            <source>The camera needs its rig to see where balls lie: make one in Set-up first.</source>
            <translation>Die Kamera braucht ihren Standort, um zu sehen, wo Kugeln liegen: Bestimmen Sie ihn erst in der Einrichtung.</translation>
        </message>
        <message>
            <source>Stop looking</source>
            <translation>Nicht mehr hinsehen</translation>
        </message>
        <message>
            <source>Check the set-up</source>
            <translation>Aufstellung prüfen</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>Die Kugeln werden gesucht…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupDesk</name>
        <message>
            <source>What was kept of a set-up in %1 cannot be read; it begins anew.</source>
            <translation>Was von einer Einrichtung in %1 aufgehoben war, ist nicht lesbar; sie beginnt neu.</translation>
        </message>
        <message>
            <source>There are no stills yet; add pictures of the board.</source>
            <translation>Es gibt noch keine Standbilder; Bilder der Tafel hinzufügen.</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>Es gibt noch keinen Film des Tisches; im Schritt Kamera einen wählen.</translation>
        </message>
        <message>
            <source>There is no lens yet; calibrate it, or set up from the table itself without tags.</source>
            <translation>Es gibt noch kein Objektiv; es kalibrieren oder ohne Marken nach dem Tisch selbst einrichten.</translation>
        </message>
        <message>
            <source>There is no rig yet; make one in the step Rig.</source>
            <translation>Es gibt noch keinen Kamerastandort; im Schritt Kamerastandort einen bestimmen.</translation>
        </message>
        <message>
            <source>No rig is in use yet; go through the steps once.</source>
            <translation>Noch ist kein Kamerastandort in Gebrauch; die Schritte einmal durchgehen.</translation>
        </message>
        <message>
            <source>The set-up is saved in %1 and is the one in use.</source>
            <translation>Die Einrichtung ist in %1 gespeichert und in Gebrauch.</translation>
        </message>
        <message>
            <source>Something was changed meanwhile, so what came out no longer holds; make it again.</source>
            <translation>Inzwischen wurde etwas geändert, darum gilt das Ergebnis nicht mehr; noch einmal bestimmen.</translation>
        </message>
        <message>
            <source>Work goes on; stop it, or let it end, before a step is undone.</source>
            <translation>Es wird noch gearbeitet; erst anhalten oder enden lassen, dann einen Schritt rückgängig machen.</translation>
        </message>
        <message>
            <source>start a new set-up</source>
            <translation>neue Einrichtung begonnen</translation>
        </message>
        <message>
            <source>the table file</source>
            <translation>Tischdatei</translation>
        </message>
        <message>
            <source>the lens file</source>
            <translation>Objektivdatei</translation>
        </message>
        <message>
            <source>the set-up in use opened</source>
            <translation>benutzte Einrichtung geöffnet</translation>
        </message>
        <message>
            <source>the film</source>
            <translation>Film</translation>
        </message>
        <message>
            <source>stills added</source>
            <translation>Aufnahmen hinzugefügt</translation>
        </message>
        <message>
            <source>stills removed</source>
            <translation>Aufnahmen entfernt</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>Objektiv</translation>
        </message>
        <message>
            <source>the projector</source>
            <translation>Projektor</translation>
        </message>
        <message>
            <source>a still taken</source>
            <translation>eine Aufnahme gemacht</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupPlace</name>
        <message>
            <source>Set-up</source>
            <translation>Einrichtung</translation>
        </message>
        <message>
            <source>New set-up</source>
            <translation>Neue Einrichtung</translation>
        </message>
        <message>
            <source>%1 ✓</source>
            <comment>a step that is done</comment>
            <translation>%1 ✓</translation>
        </message>
        <message>
            <source>%1, done</source>
            <comment>a step</comment>
            <translation>%1, erledigt</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SheetsView</name>
        <message>
            <source>Preview</source>
            <translation>Vorschau</translation>
        </message>
        <message>
            <source>Sheet %1 of %2</source>
            <translation>Blatt %1 von %2</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotFilter</name>
        <message>
            <source>Player</source>
            <translation>Spieler</translation>
        </message>
        <message>
            <source>Everybody</source>
            <translation>Alle</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>&amp;Spieler</translation>
        </message>
        <message>
            <source>Miss side</source>
            <translation>Seite des Fehlers</translation>
        </message>
        <message>
            <source>Thick or thin</source>
            <translation>Dick oder dünn</translation>
        </message>
        <message>
            <source>Too thick</source>
            <translation>Zu dick</translation>
        </message>
        <message>
            <source>Too thin</source>
            <translation>Zu dünn</translation>
        </message>
        <message>
            <source>Mi&amp;ss side</source>
            <translation>Seite des &amp;Fehlers</translation>
        </message>
        <message>
            <source>C&amp;ut</source>
            <translation>S&amp;chnitt</translation>
        </message>
        <message>
            <source>Least cut</source>
            <translation>Kleinster Schnitt</translation>
        </message>
        <message>
            <source>Most cut</source>
            <translation>Größter Schnitt</translation>
        </message>
        <message>
            <source>Sp&amp;eed</source>
            <translation>T&amp;empo</translation>
        </message>
        <message>
            <source> m/s</source>
            <translation> m/s</translation>
        </message>
        <message>
            <source>Least speed</source>
            <translation>Kleinstes Tempo</translation>
        </message>
        <message>
            <source>Most speed</source>
            <translation>Größtes Tempo</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>Tasche</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>Jede Tasche</translation>
        </message>
        <message>
            <source>P&amp;ocket</source>
            <translation>T&amp;asche</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>Spiel</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>Jedes Spiel</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>S&amp;piel</translation>
        </message>
        <message>
            <source>S&amp;ince</source>
            <translation>Se&amp;it</translation>
        </message>
        <message>
            <source>Only since a day</source>
            <translation>Erst seit einem Tag</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Erster Tag</translation>
        </message>
        <message>
            <source>All sessions</source>
            <translation>Alle Sitzungen</translation>
        </message>
        <message>
            <source>Back to all sessions</source>
            <translation>Zurück zu allen Sitzungen</translation>
        </message>
        <message>
            <source>Shots that were asked for</source>
            <translation>Stöße, nach denen gefragt wurde</translation>
        </message>
        <message>
            <source>Missed pots</source>
            <translation>Verfehlte Kugeln</translation>
        </message>
        <message>
            <source>Made, but position lost</source>
            <translation>Gelocht, aber Stellung verloren</translation>
        </message>
        <message>
            <source>Another shot was better</source>
            <translation>Ein anderer Stoß war besser</translation>
        </message>
        <message>
            <source>Dearest choice of a frame not won</source>
            <translation>Teuerste Wahl eines nicht gewonnenen Spiels</translation>
        </message>
        <message>
            <source>Fouls</source>
            <translation>Fouls</translation>
        </message>
        <message>
            <source>Safeties</source>
            <translation>Sicherheitsstöße</translation>
        </message>
        <message>
            <source>Breaks</source>
            <translation>Anstöße</translation>
        </message>
        <message>
            <source>Which shots</source>
            <translation>Welche Stöße</translation>
        </message>
        <message>
            <source>All shots</source>
            <translation>Alle Stöße</translation>
        </message>
        <message>
            <source>Sho&amp;ts</source>
            <translation>S&amp;töße</translation>
        </message>
        <message>
            <source>Longest pot</source>
            <translation>Längster Weg</translation>
        </message>
        <message>
            <source>&amp;Longest</source>
            <translation>&amp;Längster</translation>
        </message>
        <message>
            <source>Way of the cue ball times way of the object ball, in diamonds: of straight pots, 2 is short and 12 long</source>
            <translation>Weg der Weißen mal Weg der Objektkugel, in Diamanten: bei geraden Kugeln ist 2 kurz und 12 lang</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Stichwort</translation>
        </message>
        <message>
            <source>With or without a tag</source>
            <translation>Mit/ohne Stichwort</translation>
        </message>
        <message>
            <source>T&amp;ag</source>
            <translation>Stichw&amp;ort</translation>
        </message>
        <message>
            <source>Made, but on the wrong side of the next ball</source>
            <translation>Gelocht, aber auf der falschen Seite der nächsten Kugel</translation>
        </message>
        <message>
            <source>Corrected by a person</source>
            <translation>Von einer Person berichtigt</translation>
        </message>
        <message>
            <source>Not sure: please check</source>
            <translation>Nicht sicher: bitte prüfen</translation>
        </message>
        <message>
            <source>Put in by hand, or not followed</source>
            <translation>Von Hand eingegeben oder nicht verfolgt</translation>
        </message>
        <message>
            <source>Side of the cut</source>
            <translation>Seite des Schnitts</translation>
        </message>
        <message>
            <source>Cut to the left or right</source>
            <translation>Beide Schnittseiten</translation>
        </message>
        <message>
            <source>Cut to the left</source>
            <translation>Schnitt nach links</translation>
        </message>
        <message>
            <source>Cut to the right</source>
            <translation>Schnitt nach rechts</translation>
        </message>
        <message>
            <source>Cut si&amp;de</source>
            <translation>Sc&amp;hnittseite</translation>
        </message>
        <message>
            <source>Occasion</source>
            <translation>Anlass</translation>
        </message>
        <message>
            <source>Practice, match or lesson</source>
            <translation>Jeder Anlass</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Training</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>Match</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>Unterricht</translation>
        </message>
        <message>
            <source>Occasio&amp;n</source>
            <translation>A&amp;nlass</translation>
        </message>
        <message>
            <source>Minutes into the session</source>
            <translation>Minuten seit Beginn der Sitzung</translation>
        </message>
        <message>
            <source>From the first shot</source>
            <translation>Vom ersten Stoß an</translation>
        </message>
        <message>
            <source> min on</source>
            <translation> min an</translation>
        </message>
        <message>
            <source>F&amp;rom</source>
            <translation>A&amp;b</translation>
        </message>
        <message>
            <source>Until</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>Only until a day</source>
            <translation>Nur bis zu einem Tag</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Letzter Tag</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Bedingungen</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>Jeder Tisch</translation>
        </message>
        <message>
            <source>Ta&amp;ble</source>
            <translation>Billa&amp;rdtisch</translation>
        </message>
        <message>
            <source>Who else played</source>
            <translation>Wer sonst spielte</translation>
        </message>
        <message>
            <source>Whoever else played</source>
            <translation>Wer auch sonst spielte</translation>
        </message>
        <message>
            <source>&amp;With</source>
            <translation>&amp;Mit</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln Stoß</numerusform>
                <numerusform>%Ln Stöße</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotPanel</name>
        <message>
            <source>Details of the shot</source>
            <translation>Einzelheiten des Stoßes</translation>
        </message>
        <message>
            <source>Where everything rested</source>
            <translation>Wo alles liegen blieb</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>Choose a shot to read what was struck and what happened.</source>
            <translation>Wählen Sie einen Stoß, um zu lesen, wie gestoßen wurde und was geschah.</translation>
        </message>
        <message>
            <source>What was struck</source>
            <translation>Wie gestoßen wurde</translation>
        </message>
        <message>
            <source>not observable: %1</source>
            <translation>nicht erkennbar: %1</translation>
        </message>
        <message>
            <source>Only one direction of the offset can be seen: the band holds the tip point.</source>
            <translation>Nur eine Richtung ist erkennbar: Der Stoßpunkt liegt im Streifen.</translation>
        </message>
        <message>
            <source>Dotted ring: miscue limit.</source>
            <translation>Gepunkteter Ring: Abrutschgrenze.</translation>
        </message>
        <message>
            <source>± one standard uncertainty. R: ball radius, + right and above.</source>
            <translation>± eine Standardunsicherheit. R: Kugelradius, + rechts und oben.</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Was geschah</translation>
        </message>
        <message>
            <source>First contact: %1</source>
            <translation>Erster Kontakt: %1</translation>
        </message>
        <message>
            <source>The cue ball met no ball.</source>
            <translation>Die Weiße traf keine Kugel.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Nothing fell.</source>
            <translation>Keine Kugel fiel.</translation>
        </message>
        <message>
            <source>Fell: %1</source>
            <translation>Gefallen: %1</translation>
        </message>
        <message>
            <source>Events of the shot, seconds after the strike</source>
            <translation>Ereignisse des Stoßes, Sekunden nach dem Abstoß</translation>
        </message>
        <message>
            <source>Ruling</source>
            <translation>Entscheidung</translation>
        </message>
        <message>
            <source>Why it missed</source>
            <translation>Warum es danebenging</translation>
        </message>
        <message>
            <source>Turn of the object ball's line, + to the left seen along the shot.</source>
            <translation>Drehung der Linie der Objektkugel, + nach links in Stoßrichtung gesehen.</translation>
        </message>
        <message>
            <source>Suggested and taken</source>
            <translation>Vorgeschlagen und gespielt</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>column</comment>
            <translation>vorgeschlagen</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>column</comment>
            <translation>gespielt</translation>
        </message>
        <message>
            <source>* Corrected by a person: %1</source>
            <translation>* Von einer Person berichtigt: %1</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>Berichtigungen</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Zurücknehmen</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>Zurücknehmen: %1</translation>
        </message>
        <message>
            <source>The cue before the strike</source>
            <translation>Das Queue vor dem Abstoß</translation>
        </message>
        <message>
            <source>The camera moved by %1 mm while this shot was played: its places are doubtful.</source>
            <translation>Die Kamera bewegte sich um %1 mm, während dieser Stoß gespielt wurde: seine Orte sind zweifelhaft.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotTreeModel</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n Stoß</numerusform>
                <numerusform>%n Stöße</numerusform>
            </translation>
        </message>
        <message>
            <source>Frame %1</source>
            <translation>Spiel %1</translation>
        </message>
        <message>
            <source>Still running, or its film was not read to the end.</source>
            <translation>Läuft noch, oder der Film wurde nicht bis zum Ende gelesen.</translation>
        </message>
        <message>
            <source>–</source>
            <comment>speed not observable</comment>
            <translation>–</translation>
        </message>
        <message>
            <source>Shot %1, %2, %3</source>
            <translation>Stoß %1, %2, %3</translation>
        </message>
        <message>
            <source>Shot</source>
            <translation>Stoß</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Ergebnis</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>corrected by a person</source>
            <translation>von einer Person berichtigt</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StartForm</name>
        <message>
            <source>A session without a camera</source>
            <translation>Eine Sitzung ohne Kamera</translation>
        </message>
        <message>
            <source>Put the balls down, say what was played and what happened; the referee keeps turn and score.</source>
            <translation>Die Kugeln hinlegen und sagen, was gespielt wurde und was geschah; der Schiedsrichter weiß, wer dran ist und wie es steht.</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>No game: practice without a referee</source>
            <translation>Kein Spiel: Training ohne Schiedsrichter</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>&amp;Disziplin</translation>
        </message>
        <message>
            <source>One or two names with a comma; who breaks comes first</source>
            <translation>Ein oder zwei Namen mit Komma; wer anstößt, zuerst</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>&amp;Spieler</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>Eine übliche Größe oder der Pfad einer Tischdatei</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Tisch</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Training</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>Wettkampf</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>Unterricht</translation>
        </message>
        <message>
            <source>&amp;For</source>
            <translation>&amp;Zweck</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Beginnen</translation>
        </message>
        <message>
            <source>Go on with it</source>
            <translation>Fortsetzen</translation>
        </message>
        <message>
            <source>Kept in %1.</source>
            <translation>Wird in %1 aufbewahrt.</translation>
        </message>
        <message>
            <source>The session "%1" was not ended.</source>
            <translation>Die Sitzung „%1“ wurde nicht beendet.</translation>
        </message>
        <message>
            <source>By hand</source>
            <translation>Von Hand</translation>
        </message>
        <message>
            <source>From a film</source>
            <translation>Aus einem Film</translation>
        </message>
        <message>
            <source>A session from a film</source>
            <translation>Eine Sitzung aus einem Film</translation>
        </message>
        <message>
            <source>Every shot of the film is measured and ruled; you may stop at any time and keep what was measured.</source>
            <translation>Jeder Stoß des Films wird gemessen und entschieden; Sie können jederzeit anhalten und behalten, was gemessen ist.</translation>
        </message>
        <message>
            <source>Measure the film</source>
            <translation>Film messen</translation>
        </message>
        <message>
            <source>Choose a film</source>
            <translation>Film wählen</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>Filme (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Drop a film on the window, or choose one</source>
            <translation>Film auf das Fenster ziehen oder wählen</translation>
        </message>
        <message>
            <source>Fil&amp;m</source>
            <translation>Fil&amp;m</translation>
        </message>
        <message>
            <source>&amp;Rig</source>
            <translation>&amp;Standort</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>Im &amp;Rückblick ansehen</translation>
        </message>
        <message>
            <source>Measure it &amp;again</source>
            <translation>N&amp;och einmal messen</translation>
        </message>
        <message>
            <source>Choose the film first.</source>
            <translation>Wählen Sie zuerst den Film.</translation>
        </message>
        <message>
            <source>Choose the rig of this camera first; Set-up makes one from a film or still of the table.</source>
            <translation>Wählen Sie zuerst den Standort dieser Kamera; die Einrichtung bestimmt ihn aus einem Film oder einer Aufnahme des Tisches.</translation>
        </message>
        <message>
            <source>Choose the table first: the table.json that was measured, or a usual size such as 9ft.</source>
            <translation>Wählen Sie zuerst den Tisch: die gemessene table.json oder eine übliche Größe wie 9ft.</translation>
        </message>
        <message>
            <source>Live</source>
            <translation>Live</translation>
        </message>
        <message>
            <source>A session while it is played</source>
            <translation>Eine Sitzung, während gespielt wird</translation>
        </message>
        <message>
            <source>A camera looks on: every shot is measured and ruled as soon as the balls rest. Ask those who play before you film them.</source>
            <translation>Eine Kamera schaut zu: Jeder Stoß wird gemessen und entschieden, sobald die Kugeln ruhen. Fragen Sie die Spielenden, bevor Sie sie filmen.</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>&amp;Kamera</translation>
        </message>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>Wählen Sie zuerst eine Kamera oder den Film, der für sie einspringt.</translation>
        </message>
        <message>
            <source>&amp;Keep the film beside the record</source>
            <translation>Film &amp;neben der Aufzeichnung behalten</translation>
        </message>
        <message>
            <source>Only of people whose consent to being filmed is noted in Players; measured is either way</source>
            <translation>Nur von Personen, deren Einwilligung, gefilmt zu werden, in Spieler vermerkt ist; gemessen wird in jedem Fall</translation>
        </message>
        <message>
            <source>Measure it all the &amp;same</source>
            <translation>&amp;Trotzdem messen</translation>
        </message>
        <message>
            <source>Mend &amp;it in Set-up</source>
            <translation>&amp;In der Einrichtung beheben</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillCamera</name>
        <message>
            <source>No camera is chosen; connect one, or choose a film that stands in for it.</source>
            <translation>Keine Kamera ist gewählt; schließen Sie eine an, oder wählen Sie einen Film, der für sie einspringt.</translation>
        </message>
        <message>
            <source>Blurred: the board's edges are %1 px wide. Hold it still, or light it better.</source>
            <translation>Unscharf: Die Kanten der Tafel sind %1 px breit. Ruhig halten oder besser beleuchten.</translation>
        </message>
        <message>
            <source>The camera's image is mirrored; switch that off in the camera's own settings.</source>
            <translation>Das Bild der Kamera ist gespiegelt; in den Einstellungen der Kamera abschalten.</translation>
        </message>
        <message>
            <source>This print has the old layout, its first square light; print the board anew.</source>
            <translation>Dieser Druck hat das alte Muster, mit hellem erstem Feld; Tafel neu drucken.</translation>
        </message>
        <message>
            <source>The board is not seen; hold it so that most of its squares show.</source>
            <translation>Die Tafel ist nicht zu sehen; so halten, dass die meisten Felder sichtbar sind.</translation>
        </message>
        <message>
            <source>The board is where %1 has it already; move or tilt it.</source>
            <translation>Die Tafel ist, wo %1 sie schon zeigt; bewegen oder neigen.</translation>
        </message>
        <message>
            <source>The stills so far are %1 × %2 px and this image has %3 × %4 px; a lens belongs to one image size.</source>
            <translation>Die Aufnahmen bisher haben %1 × %2 px, dieses Bild hat %3 × %4 px; ein Objektiv gehört zu einer Bildgröße.</translation>
        </message>
        <message>
            <source>Sharp: the board's edges are %1 px wide.</source>
            <translation>Scharf: Die Kanten der Tafel sind %1 px breit.</translation>
        </message>
        <message>
            <source>The board is seen; it is too small in the picture to say how sharp it is.</source>
            <translation>Die Tafel ist zu sehen; sie ist im Bild zu klein, um die Schärfe zu beurteilen.</translation>
        </message>
        <message>
            <source>With it the board was in %1 % of the picture, after %2 %.</source>
            <translation>Mit ihr war die Tafel in %1 % des Bildes, bisher in %2 %.</translation>
        </message>
        <message>
            <source>The board was here before; the empty parts of the picture would gain more.</source>
            <translation>Hier war die Tafel schon; in den leeren Teilen des Bildes brächte sie mehr.</translation>
        </message>
        <message>
            <source>The board was changed; start the camera anew, so that it is looked for.</source>
            <translation>Die Tafel wurde geändert; die Kamera neu starten, damit nach ihr gesucht wird.</translation>
        </message>
        <message>
            <source>Not taken. %1</source>
            <comment>a sentence that says why</comment>
            <translation>Nicht genommen. %1</translation>
        </message>
        <message>
            <source>Stop the ca&amp;mera</source>
            <translation>Ka&amp;mera anhalten</translation>
        </message>
        <message>
            <source>Look through the ca&amp;mera</source>
            <translation>Durch die Ka&amp;mera sehen</translation>
        </message>
        <message>
            <source>Ta&amp;ke this still</source>
            <translation>Diese A&amp;ufnahme nehmen</translation>
        </message>
        <message>
            <source>Take stills with a ca&amp;mera…</source>
            <translation>Standbilder mit einer Ka&amp;mera aufnehmen…</translation>
        </message>
        <message>
            <source>Let the camera run, hold the board to it, and take a still wherever the picture is still empty.</source>
            <translation>Die Kamera laufen lassen, die Tafel davorhalten und überall dort eine Aufnahme machen, wo das Bild noch leer ist.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillView</name>
        <message>
            <source>What the camera sees of the board</source>
            <translation>Was die Kamera von der Tafel sieht</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SuggestionPanel</name>
        <message>
            <source>For whom a shot is suggested</source>
            <translation>Für wen ein Stoß vorgeschlagen wird</translation>
        </message>
        <message>
            <source>for a beginner</source>
            <translation>für Anfänger</translation>
        </message>
        <message>
            <source>for a club player</source>
            <translation>für Vereinsspieler</translation>
        </message>
        <message>
            <source>for an expert</source>
            <translation>für Könner</translation>
        </message>
        <message>
            <source>Suggested shots, best first</source>
            <translation>Vorgeschlagene Stöße, der beste zuerst</translation>
        </message>
        <message>
            <source>What if the cue ball left at this speed</source>
            <translation>Was wäre, wenn die Weiße mit diesem Tempo losliefe</translation>
        </message>
        <message>
            <source>What if the tip struck so far right of centre, in ball radii</source>
            <translation>Was wäre, wenn das Leder so weit rechts der Mitte träfe, in Kugelradien</translation>
        </message>
        <message>
            <source>What if the tip struck so far above centre, in ball radii</source>
            <translation>Was wäre, wenn das Leder so weit über der Mitte träfe, in Kugelradien</translation>
        </message>
        <message>
            <source>What if: speed</source>
            <translation>Was wäre: Tempo</translation>
        </message>
        <message>
            <source>side</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>for the player at the table</source>
            <translation>für den Spieler am Tisch</translation>
        </message>
        <message>
            <source>for %1</source>
            <comment>a player</comment>
            <translation>für %1</translation>
        </message>
        <message>
            <source>Looking for a shot…</source>
            <translation>Suche nach einem Stoß…</translation>
        </message>
        <message>
            <source>With this speed and tip point no aim pots the ball.</source>
            <translation>Mit diesem Tempo und Treffpunkt locht kein Zielen die Kugel.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TableEditor</name>
        <message>
            <source>Table; tab chooses a ball, the arrow keys move it, page up and down choose its pocket</source>
            <translation>Tisch; Tabulator wählt eine Kugel, die Pfeiltasten bewegen sie, Bild auf und Bild ab wählen ihre Tasche</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TablePage</name>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Such as: Hall, table 2</source>
            <translation>Etwa: Saal, Tisch 2</translation>
        </message>
        <message>
            <source>%1: %2 × %3 mm</source>
            <translation>%1: %2 × %3 mm</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>&amp;Size</source>
            <translation>&amp;Größe</translation>
        </message>
        <message>
            <source>Length from nose to nose</source>
            <translation>Länge von Bandennase zu Bandennase</translation>
        </message>
        <message>
            <source>&amp;Length</source>
            <translation>&amp;Länge</translation>
        </message>
        <message>
            <source>Width from nose to nose</source>
            <translation>Breite von Bandennase zu Bandennase</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>B&amp;reite</translation>
        </message>
        <message>
            <source>Diagonal A: head right to foot left</source>
            <translation>Diagonale A: Kopf rechts nach Fuß links</translation>
        </message>
        <message>
            <source>Diagonal B: head left to foot right</source>
            <translation>Diagonale B: Kopf links nach Fuß rechts</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>Diagonal &amp;A</source>
            <translation>Diagonale &amp;A</translation>
        </message>
        <message>
            <source>Diagonal &amp;B</source>
            <translation>Diagonale &amp;B</translation>
        </message>
        <message>
            <source>&amp;Open a table file…</source>
            <translation>Tischdatei ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>Open a table file</source>
            <translation>Tischdatei öffnen</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>Tischdateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Both diagonals, from nose corner to nose corner, tell whether the table is square.</source>
            <translation>Beide Diagonalen, von Bandenecke zu Bandenecke, sagen, ob der Tisch rechtwinklig ist.</translation>
        </message>
        <message>
            <source>No table has these lengths and diagonals (%1 mm apart); measure again, every time from nose to nose.</source>
            <translation>Kein Tisch hat diese Längen und Diagonalen (%1 mm auseinander); neu messen, jedes Mal von Bandennase zu Bandennase.</translation>
        </message>
        <message>
            <source>Square, as well as a tape can tell (%1 mm).</source>
            <translation>Rechtwinklig, soweit ein Maßband es sagen kann (%1 mm).</translation>
        </message>
        <message>
            <source>left</source>
            <comment>of the table</comment>
            <translation>links</translation>
        </message>
        <message>
            <source>right</source>
            <comment>of the table</comment>
            <translation>rechts</translation>
        </message>
        <message>
            <source>Out of square: the foot is pushed %1 mm to the %2 against the head. A ball's place is off by up to half of that; have the rails set, or measure from noses that are straight.</source>
            <translation>Nicht rechtwinklig: Das Fußende ist um %1 mm nach %2 gegen das Kopfende verschoben. Der Ort einer Kugel liegt bis zur Hälfte davon daneben; die Banden richten lassen oder von geraden Bandennasen aus messen.</translation>
        </message>
        <message>
            <source>the table's name</source>
            <translation>Name des Tisches</translation>
        </message>
        <message>
            <source>the table's size</source>
            <translation>Maße des Tisches</translation>
        </message>
        <message>
            <source>the diagonals</source>
            <translation>Diagonalen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TagsPage</name>
        <message>
            <source>&amp;No tags: take the camera's place from the cushions</source>
            <translation>&amp;Keine Marken: Ort der Kamera aus den Banden bestimmen</translation>
        </message>
        <message>
            <source>left</source>
            <comment>side of the picture</comment>
            <translation>links</translation>
        </message>
        <message>
            <source>right</source>
            <comment>side of the picture</comment>
            <translation>rechts</translation>
        </message>
        <message>
            <source>top</source>
            <comment>side of the picture</comment>
            <translation>oben</translation>
        </message>
        <message>
            <source>bottom</source>
            <comment>side of the picture</comment>
            <translation>unten</translation>
        </message>
        <message>
            <source>The picture has the table's &amp;head at its</source>
            <translation>Das Bild hat das Kopfen&amp;de des Tisches</translation>
        </message>
        <message>
            <source>Side of the tags' black square</source>
            <translation>Seite des schwarzen Quadrats der Marken</translation>
        </message>
        <message>
            <source>&amp;Black side</source>
            <translation>&amp;Schwarze Seite</translation>
        </message>
        <message>
            <source>Height of the tags above the cloth</source>
            <translation>Höhe der Marken über dem Tuch</translation>
        </message>
        <message>
            <source>H&amp;eight above the cloth</source>
            <translation>&amp;Höhe über dem Tuch</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Letter</translation>
        </message>
        <message>
            <source>Make the &amp;sheet (PDF)…</source>
            <translation>&amp;Blatt machen (PDF)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Druck</translation>
        </message>
        <message>
            <source>Lay one tag flat near each corner of the rails, face up, where no ball or hand covers them all. Measure the black square's corners 1 to 4 (top left, top right, bottom right, bottom left of the print) from the table's middle, x toward the foot, y to the left as seen from the head, to half a millimetre. Corners 3 and 4 may be left empty.</source>
            <translation>Nahe jeder Ecke des Rahmens eine Marke flach auflegen, Bild nach oben, wo keine Kugel oder Hand alle verdeckt. Die Ecken 1 bis 4 des schwarzen Quadrats (oben links, oben rechts, unten rechts, unten links im Druck) von der Tischmitte aus messen, x zum Fuß hin, y nach links vom Kopf aus gesehen, auf einen halben Millimeter. Die Ecken 3 und 4 dürfen leer bleiben.</translation>
        </message>
        <message>
            <source>The tags' corners in millimetres from the table's middle</source>
            <translation>Die Ecken der Marken in Millimetern von der Tischmitte aus</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Marke</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Höhe</translation>
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
            <translation>&amp;Weitere Marke</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Entfernen</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>Blatt machen</translation>
        </message>
        <message>
            <source>tags.pdf</source>
            <translation>marken.pdf</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The tags are in %1; print it at 100 % and measure its lines.</source>
            <translation>Die Marken sind in %1; mit 100 % drucken und die Linien nachmessen.</translation>
        </message>
        <message>
            <source>"%1" is no length in millimetres; type a number such as -1117.5.</source>
            <translation>„%1“ ist keine Länge in Millimetern; eine Zahl wie -1117,5 eingeben.</translation>
        </message>
        <message>
            <source>The cushions alone leave a ball's place open by several millimetres; four tags bring about one. The step Trust shows it.</source>
            <translation>Die Banden allein lassen den Ort einer Kugel um mehrere Millimeter offen; vier Marken bringen etwa einen. Der Schritt Vertrauen zeigt es.</translation>
        </message>
        <message numerus="yes">
            <source>%n tag(s) measured; at least three are needed, four check each other.</source>
            <translation>
                <numerusform>%n Marke gemessen; mindestens drei sind nötig, vier prüfen einander.</numerusform>
                <numerusform>%n Marken gemessen; mindestens drei sind nötig, vier prüfen einander.</numerusform>
            </translation>
        </message>
        <message>
            <source>without tags</source>
            <translation>ohne Marken</translation>
        </message>
        <message>
            <source>the head's side</source>
            <translation>Seite des Kopfendes</translation>
        </message>
        <message>
            <source>the tags' side</source>
            <translation>Seitenlänge der Marken</translation>
        </message>
        <message>
            <source>the tags' height</source>
            <translation>Höhe der Marken</translation>
        </message>
        <message>
            <source>a tag added</source>
            <translation>Marke hinzugefügt</translation>
        </message>
        <message>
            <source>a tag removed</source>
            <translation>Marke entfernt</translation>
        </message>
        <message>
            <source>tag %1, as measured</source>
            <translation>Marke %1, wie gemessen</translation>
        </message>
        <message>
            <source>From its lines alone a table cannot be told from the same one turned end for end, seen in a mirror, or a twentieth larger or smaller: the head's side here, a picture that is not mirrored and the size in the step Table are taken on your word.</source>
            <translation>An seinen Linien allein ist ein Tisch nicht von demselben zu unterscheiden, der umgedreht, im Spiegel gesehen oder ein Zwanzigstel größer oder kleiner ist: Die Seite des Kopfendes hier, ein nicht gespiegeltes Bild und die Größe im Schritt Tisch gelten auf Ihr Wort.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TimeLine</name>
        <message>
            <source>Time line of the session</source>
            <translation>Zeitleiste der Sitzung</translation>
        </message>
        <message>
            <source>made above, missed below</source>
            <translation>oben gelocht, unten verfehlt</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TipPointView</name>
        <message>
            <source>Tip point on the cue ball's face</source>
            <translation>Treffpunkt auf der Weißen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::UndoRow</name>
        <message>
            <source>Undo: %1 (Ctrl+Z)</source>
            <translation>Rückgängig: %1 (Ctrl+Z)</translation>
        </message>
        <message>
            <source>Nothing to undo</source>
            <translation>Nichts rückgängig zu machen</translation>
        </message>
        <message>
            <source>Redo: %1 (Ctrl+Y)</source>
            <translation>Wiederholen: %1 (Ctrl+Y)</translation>
        </message>
        <message>
            <source>Nothing to redo</source>
            <translation>Nichts zu wiederholen</translation>
        </message>
    </context>
    <context>
        <name>ferrule::WorkStrip</name>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
    </context>
</TS>
