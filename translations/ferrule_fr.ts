<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
    <context>
        <name>Actions</name>
        <message>
            <source>&amp;Open a record…</source>
            <translation>&amp;Ouvrir un carnet…</translation>
        </message>
        <message>
            <source>Open a record of measured sessions</source>
            <translation>Ouvrir un carnet de séances mesurées</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Quitter</translation>
        </message>
        <message>
            <source>Close the window</source>
            <translation>Fermer la fenêtre</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Annuler</translation>
        </message>
        <message>
            <source>Take back the last change</source>
            <translation>Annuler la dernière modification</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Rétablir</translation>
        </message>
        <message>
            <source>Make the change again</source>
            <translation>Refaire la modification</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>&amp;Plan</translation>
        </message>
        <message>
            <source>Show the table from above</source>
            <translation>Montrer la table vue de dessus</translation>
        </message>
        <message>
            <source>&amp;Film</source>
            <translation>&amp;Film</translation>
        </message>
        <message>
            <source>Show the film with the measured ways</source>
            <translation>Montrer le film avec les trajectoires mesurées</translation>
        </message>
        <message>
            <source>&amp;Side by side</source>
            <translation>&amp;Côte à côte</translation>
        </message>
        <message>
            <source>Show plan and film together</source>
            <translation>Montrer le plan et le film ensemble</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <translation>Zoom a&amp;vant</translation>
        </message>
        <message>
            <source>Enlarge the picture</source>
            <translation>Agrandir l’image</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <translation>Zoom a&amp;rrière</translation>
        </message>
        <message>
            <source>Make the picture smaller</source>
            <translation>Réduire l’image</translation>
        </message>
        <message>
            <source>&amp;Whole table</source>
            <translation>&amp;Toute la table</translation>
        </message>
        <message>
            <source>Fit the whole picture into its space</source>
            <translation>Ajuster l’image entière à l’espace disponible</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>Liste étroite des ru&amp;briques</translation>
        </message>
        <message>
            <source>Show the places as icons only</source>
            <translation>Montrer les rubriques en icônes seulement</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <translation>&amp;Lecture</translation>
        </message>
        <message>
            <source>Play in real time, or pause</source>
            <translation>Lire en temps réel ou mettre en pause</translation>
        </message>
        <message>
            <source>Image back</source>
            <translation>Image précédente</translation>
        </message>
        <message>
            <source>One image back</source>
            <translation>Reculer d’une image</translation>
        </message>
        <message>
            <source>Image on</source>
            <translation>Image suivante</translation>
        </message>
        <message>
            <source>One image on</source>
            <translation>Avancer d’une image</translation>
        </message>
        <message>
            <source>Event back</source>
            <translation>Événement précédent</translation>
        </message>
        <message>
            <source>Back to the last contact, strike or rest</source>
            <translation>Revenir au dernier contact, à la frappe ou à l’arrêt des billes</translation>
        </message>
        <message>
            <source>Event on</source>
            <translation>Événement suivant</translation>
        </message>
        <message>
            <source>On to the next contact or to rest</source>
            <translation>Aller au prochain contact ou à l’arrêt des billes</translation>
        </message>
        <message>
            <source>Shot back</source>
            <translation>Coup précédent</translation>
        </message>
        <message>
            <source>The shot before</source>
            <translation>Le coup d’avant</translation>
        </message>
        <message>
            <source>Shot on</source>
            <translation>Coup suivant</translation>
        </message>
        <message>
            <source>The next shot</source>
            <translation>Le coup d’après</translation>
        </message>
        <message>
            <source>&amp;Filter the shots</source>
            <translation>&amp;Filtrer les coups</translation>
        </message>
        <message>
            <source>List the shots that meet conditions, or go back to all sessions</source>
            <translation>Lister les coups qui remplissent des conditions, ou revenir à toutes les séances</translation>
        </message>
        <message>
            <source>Play the &amp;list</source>
            <translation>Lire la l&amp;iste</translation>
        </message>
        <message>
            <source>Play the listed shots one after another, or stop</source>
            <translation>Lire l’un après l’autre les coups de la liste, ou arrêter</translation>
        </message>
        <message>
            <source>&amp;Made</source>
            <translation>&amp;Réussi</translation>
        </message>
        <message>
            <source>The chosen ball went into its pocket</source>
            <translation>La bille choisie est tombée dans sa poche</translation>
        </message>
        <message>
            <source>Missed thic&amp;k</source>
            <translation>Manqué, trop &amp;plein</translation>
        </message>
        <message>
            <source>The chosen ball was hit too full</source>
            <translation>La bille choisie a été prise trop pleine</translation>
        </message>
        <message>
            <source>Missed thi&amp;n</source>
            <translation>Manqué, trop fi&amp;n</translation>
        </message>
        <message>
            <source>The chosen ball was cut too much</source>
            <translation>La bille choisie a été prise trop fine</translation>
        </message>
        <message>
            <source>M&amp;issed</source>
            <translation>&amp;Manqué</translation>
        </message>
        <message>
            <source>The chosen ball was missed, on either side</source>
            <translation>La bille choisie a été manquée, d’un côté ou de l’autre</translation>
        </message>
        <message>
            <source>&amp;Safety</source>
            <translation>&amp;Défense</translation>
        </message>
        <message>
            <source>A safety was played</source>
            <translation>Un coup défensif a été joué</translation>
        </message>
        <message>
            <source>S&amp;cratch</source>
            <translation>Blanche p&amp;erdue</translation>
        </message>
        <message>
            <source>The cue ball fell or left the table</source>
            <translation>La blanche est tombée ou a quitté la table</translation>
        </message>
        <message>
            <source>&amp;Foul…</source>
            <translation>&amp;Faute…</translation>
        </message>
        <message>
            <source>Another foul, to be chosen</source>
            <translation>Une autre faute, à choisir</translation>
        </message>
        <message>
            <source>&amp;Break</source>
            <translation>&amp;Casse</translation>
        </message>
        <message>
            <source>The balls were broken</source>
            <translation>C’était la casse</translation>
        </message>
        <message>
            <source>Su&amp;ggest a shot</source>
            <translation>&amp;Suggérer un coup</translation>
        </message>
        <message>
            <source>Show what would be suggested here, or hide it</source>
            <translation>Montrer ce qui serait suggéré ici, ou le masquer</translation>
        </message>
        <message>
            <source>&amp;Rack the balls</source>
            <translation>P&amp;lacer les billes</translation>
        </message>
        <message>
            <source>Set all balls up for a break</source>
            <translation>Mettre toutes les billes en place pour la casse</translation>
        </message>
        <message>
            <source>Ne&amp;xt frame</source>
            <translation>Partie sui&amp;vante</translation>
        </message>
        <message>
            <source>End this frame and begin the next one</source>
            <translation>Terminer cette partie et commencer la suivante</translation>
        </message>
        <message>
            <source>&amp;End the session</source>
            <translation>&amp;Terminer la séance</translation>
        </message>
        <message>
            <source>Keep all shots and close the session</source>
            <translation>Garder tous les coups et fermer la séance</translation>
        </message>
        <message>
            <source>&amp;Shots behind it</source>
            <translation>Voir les &amp;coups</translation>
        </message>
        <message>
            <source>Look at the shots behind the chosen part of a chart</source>
            <translation>Voir les coups que résume la partie choisie d’un graphique</translation>
        </message>
        <message>
            <source>&amp;Export the chart…</source>
            <translation>&amp;Exporter le graphique…</translation>
        </message>
        <message>
            <source>Write the chosen chart as SVG, PNG or CSV</source>
            <translation>Écrire le graphique choisi en SVG, PNG ou CSV</translation>
        </message>
        <message>
            <source>Export the &amp;report…</source>
            <translation>Exporter le &amp;bilan…</translation>
        </message>
        <message>
            <source>Write the report as PDF or HTML, or its numbers as CSV</source>
            <translation>Écrire le bilan en PDF ou HTML, ou ses chiffres en CSV</translation>
        </message>
        <message>
            <source>Step &amp;back</source>
            <translation>Étape &amp;précédente</translation>
        </message>
        <message>
            <source>The step of the set-up before</source>
            <translation>L’étape précédente de l’installation</translation>
        </message>
        <message>
            <source>Step &amp;on</source>
            <translation>Étape &amp;suivante</translation>
        </message>
        <message>
            <source>The next step of the set-up</source>
            <translation>L’étape suivante de l’installation</translation>
        </message>
        <message>
            <source>&amp;Check the rig again…</source>
            <translation>&amp;Revérifier le calage…</translation>
        </message>
        <message>
            <source>Ask a film whether the rig in use still fits</source>
            <translation>Vérifier sur un film si le calage utilisé convient toujours</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>&amp;Arrêter</translation>
        </message>
        <message>
            <source>Stop the long work that is going on</source>
            <translation>Arrêter le traitement en cours</translation>
        </message>
        <message>
            <source>&amp;Metres per second</source>
            <translation>&amp;Mètres par seconde</translation>
        </message>
        <message>
            <source>Show speeds in m/s</source>
            <translation>Afficher les vitesses en m/s</translation>
        </message>
        <message>
            <source>&amp;Kilometres per hour</source>
            <translation>&amp;Kilomètres par heure</translation>
        </message>
        <message>
            <source>Show speeds in km/h</source>
            <translation>Afficher les vitesses en km/h</translation>
        </message>
        <message>
            <source>M&amp;iles per hour</source>
            <translation>M&amp;iles par heure</translation>
        </message>
        <message>
            <source>Show speeds in mph</source>
            <translation>Afficher les vitesses en mph</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Comme le &amp;système</translation>
        </message>
        <message>
            <source>Light or dark as the desktop is</source>
            <translation>Clair ou sombre, comme le bureau</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Clair</translation>
        </message>
        <message>
            <source>Always light</source>
            <translation>Toujours clair</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>S&amp;ombre</translation>
        </message>
        <message>
            <source>Always dark</source>
            <translation>Toujours sombre</translation>
        </message>
        <message>
            <source>&amp;Keys</source>
            <translation>&amp;Raccourcis clavier</translation>
        </message>
        <message>
            <source>&amp;About Ferrule</source>
            <translation>À &amp;propos de Ferrule</translation>
        </message>
        <message>
            <source>&amp;Record</source>
            <translation>&amp;Carnet</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>É&amp;dition</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Affichage</translation>
        </message>
        <message>
            <source>&amp;Step</source>
            <translation>&amp;Navigation</translation>
        </message>
        <message>
            <source>Sess&amp;ion</source>
            <translation>&amp;Séance</translation>
        </message>
        <message>
            <source>Fi&amp;gures</source>
            <translation>&amp;Graphiques</translation>
        </message>
        <message>
            <source>Set-&amp;up</source>
            <translation>&amp;Installation</translation>
        </message>
        <message>
            <source>S&amp;peed unit</source>
            <translation>&amp;Unité de vitesse</translation>
        </message>
        <message>
            <source>&amp;Appearance</source>
            <translation>&amp;Apparence</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>Aid&amp;e</translation>
        </message>
        <message>
            <source>The desktop's language, where the program speaks it</source>
            <translation>La langue du bureau, si le programme la parle</translation>
        </message>
        <message>
            <source>Show every word in this language</source>
            <translation>Afficher tous les mots dans cette langue</translation>
        </message>
        <message>
            <source>&amp;How this place is used</source>
            <translation>Com&amp;ment utiliser cette rubrique</translation>
        </message>
        <message>
            <source>What the place is for, and the steps in their order</source>
            <translation>À quoi sert la rubrique, et les étapes dans l’ordre</translation>
        </message>
        <message>
            <source>Every action of the window and its keys</source>
            <translation>Toutes les actions de la fenêtre et leurs touches</translation>
        </message>
        <message>
            <source>Version, cautions and licences</source>
            <translation>Version, précautions et licences</translation>
        </message>
        <message>
            <source>&amp;Language</source>
            <translation>&amp;Langue</translation>
        </message>
        <message>
            <source>Balls from a &amp;photo…</source>
            <translation>Billes d’après une ph&amp;oto…</translation>
        </message>
        <message>
            <source>Put the balls where a photo of the table's camera shows them</source>
            <translation>Placer les billes là où une photo de la caméra de la table les montre</translation>
        </message>
        <message>
            <source>&amp;Correct the shot…</source>
            <translation>&amp;Corriger le coup…</translation>
        </message>
        <message>
            <source>Put right what was read wrongly of the shot in Review</source>
            <translation>Rectifier dans la relecture ce qui a été mal lu du coup</translation>
        </message>
        <message>
            <source>Correct &amp;ball and pocket…</source>
            <translation>Corriger &amp;bille et poche…</translation>
        </message>
        <message>
            <source>Say which ball was meant for which pocket</source>
            <translation>Dire quelle bille visait quelle poche</translation>
        </message>
        <message>
            <source>Correct who &amp;played…</source>
            <translation>Corriger qui a &amp;joué…</translation>
        </message>
        <message>
            <source>Say who played the shot</source>
            <translation>Dire qui a joué le coup</translation>
        </message>
        <message>
            <source>Correct the ru&amp;ling…</source>
            <translation>Corriger la déc&amp;ision…</translation>
        </message>
        <message>
            <source>Replace what the referee made of the shot</source>
            <translation>Remplacer ce que l’arbitre a décidé du coup</translation>
        </message>
        <message>
            <source>&amp;Swap the names of two balls…</source>
            <translation>Éc&amp;hanger les noms de deux billes…</translation>
        </message>
        <message>
            <source>Say that two balls were taken for each other</source>
            <translation>Dire que deux billes ont été prises l’une pour l’autre</translation>
        </message>
        <message>
            <source>&amp;Move balls</source>
            <translation>&amp;Déplacer des billes</translation>
        </message>
        <message>
            <source>Move balls to where they lay before the shot, then after it</source>
            <translation>Déplacer les billes là où elles étaient avant le coup, puis après</translation>
        </message>
        <message>
            <source>Write a no&amp;te</source>
            <translation>Écrire une no&amp;te</translation>
        </message>
        <message>
            <source>Write a note on the shot in Review</source>
            <translation>Écrire une note sur le coup dans la relecture</translation>
        </message>
        <message>
            <source>Give a ta&amp;g</source>
            <translation>Donner une étiquette (&amp;g)</translation>
        </message>
        <message>
            <source>Give the shot in Review a tag, by which it can be found</source>
            <translation>Donner au coup de la relecture une étiquette qui permet de le retrouver</translation>
        </message>
        <message>
            <source>S&amp;ave the picture…</source>
            <translation>&amp;Enregistrer l’image…</translation>
        </message>
        <message>
            <source>&amp;Add a player</source>
            <translation>&amp;Ajouter un joueur</translation>
        </message>
        <message>
            <source>Add a player to the record</source>
            <translation>Ajouter un joueur au carnet</translation>
        </message>
        <message>
            <source>Add a &amp;guest</source>
            <translation>Ajouter un &amp;invité</translation>
        </message>
        <message>
            <source>Add somebody whose shots are given to a player later, or erased</source>
            <translation>Ajouter quelqu’un dont les coups seront plus tard attribués à un joueur, ou effacés</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>&amp;Joueurs</translation>
        </message>
        <message>
            <source>&amp;Export the player…</source>
            <translation>&amp;Exporter le joueur…</translation>
        </message>
        <message>
            <source>Write all that is kept of the chosen player into a folder</source>
            <translation>Écrire dans un dossier tout ce qui est gardé du joueur choisi</translation>
        </message>
        <message>
            <source>&amp;Take in another record…</source>
            <translation>Reprendre &amp;un autre carnet…</translation>
        </message>
        <message>
            <source>Add what a record of another computer holds, without doubles</source>
            <translation>Ajouter ce que contient le carnet d’un autre ordinateur, sans doublons</translation>
        </message>
        <message>
            <source>Answer &amp;1</source>
            <translation>Réponse &amp;1</translation>
        </message>
        <message>
            <source>Give the answer of this number to what the referee asks</source>
            <translation>Donner la réponse de ce numéro à la question de l’arbitre</translation>
        </message>
        <message>
            <source>Answer &amp;2</source>
            <translation>Réponse &amp;2</translation>
        </message>
        <message>
            <source>Answer &amp;3</source>
            <translation>Réponse &amp;3</translation>
        </message>
        <message>
            <source>Answer &amp;4</source>
            <translation>Réponse &amp;4</translation>
        </message>
        <message>
            <source>Answer &amp;5</source>
            <translation>Réponse &amp;5</translation>
        </message>
        <message>
            <source>Answer &amp;6</source>
            <translation>Réponse &amp;6</translation>
        </message>
        <message>
            <source>Answer &amp;7</source>
            <translation>Réponse &amp;7</translation>
        </message>
        <message>
            <source>Answer &amp;8</source>
            <translation>Réponse &amp;8</translation>
        </message>
        <message>
            <source>Answer &amp;later</source>
            <translation>Répondre p&amp;lus tard</translation>
        </message>
        <message>
            <source>Put the question off; Review keeps the shot marked</source>
            <translation>Reporter la question ; le coup reste marqué dans Relecture</translation>
        </message>
        <message>
            <source>&amp;What the referee asks</source>
            <translation>Ce que demande l’&amp;arbitre</translation>
        </message>
        <message>
            <source>Split or &amp;join shots…</source>
            <translation>Diviser ou joindre des co&amp;ups…</translation>
        </message>
        <message>
            <source>Say where a shot ends: another one began in it, or the next belongs to it</source>
            <translation>Dire où finit un coup : un autre y a commencé, ou le suivant en fait partie</translation>
        </message>
        <message>
            <source>Balls put do&amp;wn…</source>
            <translation>Billes p&amp;osées…</translation>
        </message>
        <message>
            <source>Put right which balls were put down before the shot</source>
            <translation>Corriger quelles billes ont été posées avant le coup</translation>
        </message>
        <message>
            <source>Write the picture that Review shows as PNG, or the plan as SVG</source>
            <translation>Écrire l’image que montre la relecture en PNG, ou le plan en SVG</translation>
        </message>
        <message>
            <source>Save a &amp;clip…</source>
            <translation>Enre&amp;gistrer un clip…</translation>
        </message>
        <message>
            <source>Write the shot in Review as a short film</source>
            <translation>Écrire le coup de la relecture en court film</translation>
        </message>
        <message>
            <source>&amp;Compare shots</source>
            <translation>&amp;Comparer des coups</translation>
        </message>
        <message>
            <source>Hold this shot and set others beside it, or end that</source>
            <translation>Garder ce coup et en mettre d’autres à côté, ou arrêter</translation>
        </message>
        <message>
            <source>Play with &amp;sound</source>
            <translation>Avec le &amp;son</translation>
        </message>
        <message>
            <source>Let the film be heard while it plays, or not</source>
            <translation>Faire entendre le film pendant la lecture, ou non</translation>
        </message>
        <message>
            <source>Fell &amp;too</source>
            <translation>A&amp;ussi tombée</translation>
        </message>
        <message>
            <source>The chosen ball fell in its pocket with the last shot, as on a break; dragging it into a pocket says the same</source>
            <translation>La bille choisie est aussi tombée dans sa poche au dernier coup, par exemple à la casse ; la tirer dans une poche dit la même chose</translation>
        </message>
    </context>
    <context>
        <name>AnswerWords</name>
        <message>
            <source>Yes</source>
            <translation>Oui</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Non</translation>
        </message>
        <message>
            <source>It left the table</source>
            <translation>Elle a quitté la table</translation>
        </message>
        <message>
            <source>It lies on the table</source>
            <translation>Elle est sur la table</translation>
        </message>
        <message>
            <source>It fell: %1</source>
            <comment>a pocket</comment>
            <translation>Tombée : %1</translation>
        </message>
        <message>
            <source>A safety was called</source>
            <translation>Une défense était annoncée</translation>
        </message>
        <message>
            <source>%1 has %2</source>
            <comment>a player, solids or stripes</comment>
            <translation>%1 joue %2</translation>
        </message>
        <message>
            <source>%1 or more</source>
            <comment>balls</comment>
            <translation>%1 ou plus</translation>
        </message>
        <message>
            <source>Leave it as it is ruled</source>
            <translation>Laisser tel que c’est jugé</translation>
        </message>
    </context>
    <context>
        <name>AskedSentence</name>
        <message>
            <source>Aim</source>
            <translation>Direction</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Vitesse</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Effet latéral</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Hauteur</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Inclinaison</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the left of what was asked</source>
            <translation>la blanche part %1 à gauche de ce qui était demandé</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the right of what was asked</source>
            <translation>la blanche part %1 à droite de ce qui était demandé</translation>
        </message>
        <message>
            <source>shots come out %1 too fast</source>
            <translation>les coups sont trop rapides de %1</translation>
        </message>
        <message>
            <source>shots come out %1 too slow</source>
            <translation>les coups sont trop lents de %1</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far right</source>
            <translation>le procédé touche la bille %1 trop à droite</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far left</source>
            <translation>le procédé touche la bille %1 trop à gauche</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too high</source>
            <translation>le procédé touche la bille %1 trop haut</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too low</source>
            <translation>le procédé touche la bille %1 trop bas</translation>
        </message>
        <message>
            <source>the cue is %1 too steep</source>
            <translation>la queue est trop relevée de %1</translation>
        </message>
        <message>
            <source>the cue is %1 too flat</source>
            <translation>la queue est trop à plat de %1</translation>
        </message>
        <message>
            <source>the harder the shot, the more falls short: %1 of what is asked</source>
            <translation>plus le coup est fort, plus il manque de vitesse : %1 de la vitesse demandée</translation>
        </message>
        <message>
            <source>the harder the shot, the more it overshoots: %1 of what is asked</source>
            <translation>plus le coup est fort, plus la vitesse dépasse : %1 de la vitesse demandée</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too small</source>
            <translation>les changements de direction sont trop petits de %1</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too large</source>
            <translation>les changements de direction sont trop grands de %1</translation>
        </message>
        <message>
            <source>the more is asked, the more is missing: %1 of it</source>
            <translation>plus on demande, plus il en manque : %1 de la demande</translation>
        </message>
        <message>
            <source>the more is asked, the more is too much: %1 of it</source>
            <translation>plus on demande, plus il y en a trop : %1 de la demande</translation>
        </message>
        <message>
            <source>long shots fall %1 short</source>
            <translation>les coups longs restent trop courts de %1</translation>
        </message>
        <message>
            <source>long shots go %1 too far</source>
            <translation>les coups longs vont trop loin de %1</translation>
        </message>
        <message>
            <source>clipped at %1: more was asked and did not arrive</source>
            <translation>plafonné à %1 : ce qui était demandé au-delà n’est pas arrivé</translation>
        </message>
        <message>
            <source>comes as asked, to within %1</source>
            <translation>conforme à la demande, à %1 près</translation>
        </message>
        <message>
            <source>single shots scatter by %1</source>
            <translation>les coups isolés se dispersent de %1</translation>
        </message>
        <message>
            <source>single shots scatter by less than the film can tell</source>
            <translation>les coups isolés se dispersent moins que le film ne permet de le voir</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>quantity, findings</comment>
            <translation>%1 : %2.</translation>
        </message>
    </context>
    <context>
        <name>CameraWords</name>
        <message>
            <source>%1 × %2, %3 images a second</source>
            <translation>%1 × %2, %3 images par seconde</translation>
        </message>
    </context>
    <context>
        <name>ChartWords</name>
        <message>
            <source>%1 m</source>
            <translation>%1 m</translation>
        </message>
        <message>
            <source>%1: %2 (%3 to %4), %5</source>
            <translation>%1 : %2 (%3 à %4), %5</translation>
        </message>
        <message>
            <source>a change beyond luck</source>
            <translation>un changement au-delà du hasard</translation>
        </message>
        <message>
            <source>no change beyond luck</source>
            <translation>aucun changement au-delà du hasard</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session. Hollow: matches.</source>
            <translation>Traits et zone : intervalle à 95 %. Nombres : coups de la séance. Symboles creux : matchs.</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session.</source>
            <translation>Traits et zone : intervalle à 95 %. Nombres : coups de la séance.</translation>
        </message>
        <message>
            <source>cut across, distance down</source>
            <translation>coupe en largeur, distance en hauteur</translation>
        </message>
        <message>
            <source>only %1</source>
            <translation>seulement %1</translation>
        </message>
        <message>
            <source>Made, 95 % interval and number tried. Fewer than %1: not enough to say.</source>
            <translation>Réussite, intervalle à 95 % et nombre de tentatives. Moins de %1 : trop peu pour conclure.</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>Réussite par poche</translation>
        </message>
        <message>
            <source>Made and number tried; lines: 95 % interval.</source>
            <translation>Réussite et nombre de tentatives ; traits : intervalle à 95 %.</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>De quel côté sont les erreurs</translation>
        </message>
        <message>
            <source>too thick</source>
            <translation>trop pleine</translation>
        </message>
        <message>
            <source>too thin</source>
            <translation>trop fine</translation>
        </message>
        <message>
            <source>%1 thick</source>
            <translation>%1 trop pleines</translation>
        </message>
        <message>
            <source>not enough</source>
            <translation>trop peu</translation>
        </message>
        <message>
            <source>cuts to the left</source>
            <translation>coupes vers la gauche</translation>
        </message>
        <message>
            <source>cuts to the right</source>
            <translation>coupes vers la droite</translation>
        </message>
        <message>
            <source>Missed cuts only. Right: 95 % interval of the share that was too thick.</source>
            <translation>Coupes manquées seulement. À droite : intervalle à 95 % de la part des coupes trop pleines.</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>Coups comparables dans d’autres conditions</translation>
        </message>
        <message>
            <source>first 40 minutes</source>
            <translation>40 premières minutes</translation>
        </message>
        <message>
            <source>after 40 minutes</source>
            <translation>après 40 minutes</translation>
        </message>
        <message>
            <source>in practice</source>
            <translation>à l’entraînement</translation>
        </message>
        <message>
            <source>in matches</source>
            <translation>en match</translation>
        </message>
        <message>
            <source>Made, equally hard shots; lines: 95 % interval of the difference.</source>
            <translation>Réussite, coups de même difficulté ; traits : intervalle à 95 % de la différence.</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>a band of speed and its unit</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>Réussies selon l’entrée dans la poche</translation>
        </message>
        <message>
            <source>over %1°</source>
            <translation>plus de %1°</translation>
        </message>
        <message>
            <source>%1 to %2°</source>
            <translation>%1 à %2°</translation>
        </message>
        <message>
            <source>corner, %1</source>
            <comment>a pocket, angles</comment>
            <translation>coin, %1</translation>
        </message>
        <message>
            <source>side, %1</source>
            <comment>a pocket, angles</comment>
            <translation>milieu, %1</translation>
        </message>
    </context>
    <context>
        <name>CheckSentence</name>
        <message>
            <source>%1 fits %2 and %3.</source>
            <translation>%1 convient à %2 et à %3.</translation>
        </message>
        <message>
            <source>The camera has moved by %1 mm and turned by %2 degrees since %3 was made; make the rig again from %4.</source>
            <translation>La caméra s’est déplacée de %1 mm et a tourné de %2 degrés depuis que %3 a été fait ; refaites le calage à partir de %4.</translation>
        </message>
        <message>
            <source>The lens in %1 belongs to another camera or another zoom than %2; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>L’objectif de %1 est celui d’une autre caméra ou d’un autre zoom que %2 ; étalonnez l’objectif de cette caméra et refaites le calage avec lui.</translation>
        </message>
        <message>
            <source>%1 was straightened before, and the lens in %2 straightens it a second time; switch off the lens correction of the camera or the editor and film again.</source>
            <translation>%1 a déjà été redressé, et l’objectif de %2 le redresse une seconde fois ; désactivez la correction d’objectif de la caméra ou du logiciel de montage et filmez de nouveau.</translation>
        </message>
        <message>
            <source>%1 is bent by its lens and %2 does not straighten it; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>%1 est courbé par son objectif et %2 ne le redresse pas ; étalonnez l’objectif de cette caméra et refaites le calage avec lui.</translation>
        </message>
        <message>
            <source>The picture of %1 is %2 times the size that the lens in %3 was made for; film at the size, zoom and crop of the calibration, or calibrate again at this one and make the rig again.</source>
            <translation>L’image de %1 fait %2 fois la taille pour laquelle l’objectif de %3 a été étalonné ; filmez avec la taille, le zoom et le cadrage de l’étalonnage, ou étalonnez de nouveau avec ceux-ci et refaites le calage.</translation>
        </message>
        <message>
            <source>The tags lie %1 mm higher than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>Les repères sont %1 mm plus haut que ne le dit %2 ; mesurez leur hauteur au-dessus du tapis, corrigez le fichier et refaites le calage.</translation>
        </message>
        <message>
            <source>The tags lie %1 mm lower than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>Les repères sont %1 mm plus bas que ne le dit %2 ; mesurez leur hauteur au-dessus du tapis, corrigez le fichier et refaites le calage.</translation>
        </message>
        <message>
            <source>Tag %1 lies %2 mm from where %3 has it; measure its corners, correct the file and make the rig again.</source>
            <translation>Le repère %1 se trouve à %2 mm de l’endroit indiqué par %3 ; mesurez ses coins, corrigez le fichier et refaites le calage.</translation>
        </message>
        <message>
            <source>The tags %1 lie in each other's place; swap them, or correct %2, and make the rig again.</source>
            <translation>Les repères %1 sont intervertis ; échangez-les, ou corrigez %2, et refaites le calage.</translation>
        </message>
        <message>
            <source>Tag %1 is turned by %2 degrees from what %3 says; turn it, or correct the file, and make the rig again.</source>
            <translation>Le repère %1 est tourné de %2 degrés par rapport à ce que dit %3 ; tournez-le, ou corrigez le fichier, et refaites le calage.</translation>
        </message>
        <message>
            <source>The table is %1 mm longer and %2 mm wider than %3 says (less than 0: shorter, narrower); measure it nose to nose, correct the file and make the rig again.</source>
            <translation>La table est %1 mm plus longue et %2 mm plus large que ne le dit %3 (moins de 0 : plus courte, plus étroite) ; mesurez-la de nez à nez, corrigez le fichier et refaites le calage.</translation>
        </message>
        <message>
            <source>%1 does not fit %2 and %3, and no single fault explains it; measure the tags again, make the rig again from this film, and check again.</source>
            <translation>%1 ne convient pas à %2 et à %3, et aucun défaut seul ne l’explique ; mesurez de nouveau les repères, refaites le calage à partir de ce film et vérifiez encore.</translation>
        </message>
        <message>
            <source>%1: not seen</source>
            <translation>%1 : non vu</translation>
        </message>
        <message>
            <source>%1: %2 mm (sound up to %3 mm)</source>
            <translation>%1 : %2 mm (correct jusqu’à %3 mm)</translation>
        </message>
        <message>
            <source>%1 - too much</source>
            <translation>%1 – trop grand</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <comment>two cushions</comment>
            <translation>%1 et %2</translation>
        </message>
        <message>
            <source>Tag %1: from its place</source>
            <translation>Repère %1 : écart à sa place</translation>
        </message>
        <message>
            <source>%1: nose from a straight line</source>
            <comment>a cushion</comment>
            <translation>%1 : nez, écart à la ligne droite</translation>
        </message>
        <message>
            <source>%1: nose from its place (+ inward)</source>
            <comment>a cushion</comment>
            <translation>%1 : nez, écart à sa place (+ vers l’intérieur)</translation>
        </message>
        <message>
            <source>%1: from parallel</source>
            <comment>two cushions</comment>
            <translation>%1 : écart au parallélisme</translation>
        </message>
        <message>
            <source>Length nose to nose, seen minus measured</source>
            <translation>Longueur de nez à nez, vue moins mesurée</translation>
        </message>
        <message>
            <source>Width nose to nose, seen minus measured</source>
            <translation>Largeur de nez à nez, vue moins mesurée</translation>
        </message>
        <message>
            <source>Diameters of the balls, largest minus smallest</source>
            <translation>Diamètres des billes, le plus grand moins le plus petit</translation>
        </message>
        <message>
            <source>Deepest ball inside a cushion or another ball</source>
            <translation>Bille la plus enfoncée dans une bande ou une autre bille</translation>
        </message>
    </context>
    <context>
        <name>CorrectionMenu</name>
        <message>
            <source>is %1, and the other way round</source>
            <translation>est %1, et inversement</translation>
        </message>
        <message>
            <source>to %1</source>
            <translation>vers %1</translation>
        </message>
        <message>
            <source>No pot was tried</source>
            <translation>Aucune bille n’était jouée à une poche</translation>
        </message>
        <message>
            <source>Nobody knows</source>
            <translation>Personne ne sait</translation>
        </message>
        <message>
            <source>It was a foul</source>
            <translation>C’était une faute</translation>
        </message>
        <message>
            <source>It was no foul</source>
            <translation>Ce n’était pas une faute</translation>
        </message>
        <message>
            <source>%1 is at the table next</source>
            <translation>%1 joue ensuite</translation>
        </message>
        <message>
            <source>The cue ball stays as it lies</source>
            <translation>La blanche reste où elle est</translation>
        </message>
        <message>
            <source>%1 wins the frame</source>
            <translation>%1 gagne la partie</translation>
        </message>
        <message>
            <source>The frame goes on</source>
            <translation>La partie continue</translation>
        </message>
        <message>
            <source>As the referee ruled</source>
            <translation>Comme l’arbitre a décidé</translation>
        </message>
        <message>
            <source>In the whole shot</source>
            <translation>Dans tout le coup</translation>
        </message>
        <message>
            <source>From this image on</source>
            <translation>À partir de cette image</translation>
        </message>
        <message>
            <source>&amp;Result</source>
            <translation>&amp;Résultat</translation>
        </message>
        <message>
            <source>&amp;Ball and pocket</source>
            <translation>&amp;Bille et poche</translation>
        </message>
        <message>
            <source>Ball that was met &amp;first</source>
            <translation>Bille touchée en &amp;premier</translation>
        </message>
        <message>
            <source>Who &amp;played</source>
            <translation>Qui a &amp;joué</translation>
        </message>
        <message>
            <source>R&amp;uling</source>
            <translation>&amp;Décision</translation>
        </message>
        <message>
            <source>&amp;Names of two balls</source>
            <translation>&amp;Noms de deux billes</translation>
        </message>
        <message>
            <source>Struck in this image</source>
            <translation>Frappé dans cette image</translation>
        </message>
        <message>
            <source>At rest from this image on</source>
            <translation>À l’arrêt à partir de cette image</translation>
        </message>
        <message>
            <source>&amp;Strike and rest</source>
            <translation>&amp;Frappe et arrêt</translation>
        </message>
        <message>
            <source>Another shot was struck in this image</source>
            <translation>Un autre coup a été joué dans cette image</translation>
        </message>
        <message>
            <source>The next shot belongs to this one</source>
            <translation>Le coup suivant fait partie de celui-ci</translation>
        </message>
        <message>
            <source>%1, put down at %2</source>
            <translation>%1, posée à %2</translation>
        </message>
        <message>
            <source>Nobody put it down</source>
            <translation>Personne ne l’a posée</translation>
        </message>
        <message>
            <source>It was another ball</source>
            <translation>C’était une autre bille</translation>
        </message>
        <message>
            <source>A ball was put down that is not listed</source>
            <translation>Une bille absente de cette liste a été posée</translation>
        </message>
        <message>
            <source>&amp;Where the shot ends</source>
            <translation>&amp;Où finit le coup</translation>
        </message>
        <message>
            <source>Balls put &amp;down before it</source>
            <translation>Billes posées &amp;avant</translation>
        </message>
    </context>
    <context>
        <name>CorrectionWords</name>
        <message>
            <source>player</source>
            <translation>joueur</translation>
        </message>
        <message>
            <source>result</source>
            <translation>résultat</translation>
        </message>
        <message>
            <source>first contact</source>
            <translation>premier contact</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>blanche perdue</translation>
        </message>
        <message>
            <source>ball</source>
            <translation>bille</translation>
        </message>
        <message>
            <source>pocket</source>
            <translation>poche</translation>
        </message>
        <message>
            <source>ruling</source>
            <translation>décision</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>lecture</translation>
        </message>
        <message>
            <source>names of two balls</source>
            <translation>noms de deux billes</translation>
        </message>
        <message>
            <source>a ball's place before the shot</source>
            <translation>place d’une bille avant le coup</translation>
        </message>
        <message>
            <source>a ball's place after the shot</source>
            <translation>place d’une bille après le coup</translation>
        </message>
        <message>
            <source>strike and rest</source>
            <translation>frappe et arrêt</translation>
        </message>
        <message>
            <source>unknown</source>
            <translation>inconnu</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
        </message>
        <message>
            <source>no</source>
            <translation>non</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other</source>
            <translation>%1 et %2 ont été prises l’une pour l’autre</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other from %3 on</source>
            <translation>%1 et %2 ont été prises l’une pour l’autre à partir de %3</translation>
        </message>
        <message>
            <source>%1 put on the table before the shot</source>
            <translation>%1 posée sur la table avant le coup</translation>
        </message>
        <message>
            <source>%1 put on the table after the shot</source>
            <translation>%1 posée sur la table après le coup</translation>
        </message>
        <message>
            <source>%1 moved by %2 before the shot</source>
            <translation>%1 déplacée de %2 avant le coup</translation>
        </message>
        <message>
            <source>%1 moved by %2 after the shot</source>
            <translation>%1 déplacée de %2 après le coup</translation>
        </message>
        <message>
            <source>Strike and rest: measured %1 and %2, corrected to %3 and %4</source>
            <translation>Frappe et arrêt : mesurés %1 et %2, corrigés en %3 et %4</translation>
        </message>
        <message>
            <source>Ruling: replaced by a person's</source>
            <translation>Décision : remplacée par celle d’une personne</translation>
        </message>
        <message>
            <source>%1: %2, confirmed</source>
            <translation>%1 : %2, confirmé</translation>
        </message>
        <message>
            <source>%1: measured %2, corrected to %3</source>
            <translation>%1 : mesuré %2, corrigé en %3</translation>
        </message>
        <message>
            <source>ball and pocket</source>
            <translation>bille et poche</translation>
        </message>
        <message>
            <source>Say first which ball was meant for which pocket; then it can be made.</source>
            <translation>Dites d’abord quelle bille visait quelle poche ; elle peut ensuite être empochée.</translation>
        </message>
        <message>
            <source>No referee watched this shot, so there is no ruling to replace.</source>
            <translation>Aucun arbitre n’a suivi ce coup : il n’y a pas de décision à remplacer.</translation>
        </message>
        <message>
            <source>Neither ball was followed in this shot, so there are no names to swap.</source>
            <translation>Aucune des deux billes n’a été suivie dans ce coup : il n’y a pas de noms à échanger.</translation>
        </message>
        <message>
            <source>The ways of this shot do not reach so far; choose a time between them.</source>
            <translation>Les trajets de ce coup ne vont pas si loin ; choisissez un instant entre leurs bouts.</translation>
        </message>
        <message>
            <source>A later correction in this frame rests on this one; take that one back first.</source>
            <translation>Une correction plus récente de cette partie repose sur celle-ci ; retirez d’abord l’autre.</translation>
        </message>
        <message>
            <source>This frame is still being put in; undo the shot in Session instead.</source>
            <translation>Cette partie est encore en cours de saisie ; annulez plutôt le coup dans Séance.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>note</source>
            <translation>note</translation>
        </message>
        <message>
            <source>tag</source>
            <translation>étiquette</translation>
        </message>
        <message>
            <source>two shots in one</source>
            <translation>deux coups en un</translation>
        </message>
        <message>
            <source>one shot in two</source>
            <translation>un coup en deux</translation>
        </message>
        <message>
            <source>a ball put down before the shot</source>
            <translation>une bille posée avant le coup</translation>
        </message>
        <message>
            <source>suggestion</source>
            <translation>suggestion</translation>
        </message>
        <message>
            <source>%1 was not put down at %2</source>
            <translation>%1 n’a pas été posée à %2</translation>
        </message>
        <message>
            <source>%1 was put down at %2</source>
            <translation>%1 a été posée à %2</translation>
        </message>
        <message>
            <source>Put down at %1: measured %2, corrected to %3</source>
            <translation>Posée à %1 : mesuré %2, corrigé en %3</translation>
        </message>
        <message>
            <source>%1 put down %2 away from where it was measured</source>
            <translation>%1 posée à %2 de l’endroit mesuré</translation>
        </message>
        <message>
            <source>Measured as one shot, split in two at %1</source>
            <translation>Mesuré comme un coup, divisé en deux à %1</translation>
        </message>
        <message>
            <source>Measured as two shots, joined at %1</source>
            <translation>Mesuré comme deux coups, joints à %1</translation>
        </message>
        <message>
            <source>This frame was put in by hand: its shots have no film by which to part or join them.</source>
            <translation>Cette partie a été saisie à la main : ses coups n’ont pas de film permettant de les diviser ou de les joindre.</translation>
        </message>
        <message>
            <source>No shot follows in this frame, so there is nothing to join with.</source>
            <translation>Aucun coup ne suit dans cette partie : il n’y a rien à joindre.</translation>
        </message>
        <message>
            <source>This ball was not put down there any more; choose again.</source>
            <translation>Cette bille n’est plus notée comme posée là ; choisissez à nouveau.</translation>
        </message>
    </context>
    <context>
        <name>CueSection</name>
        <message>
            <source>Cue pointed to</source>
            <translation>La queue visait</translation>
        </message>
        <message>
            <source>Ball went to</source>
            <translation>La bille est partie vers</translation>
        </message>
        <message>
            <source>Between them</source>
            <translation>Entre les deux</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Inclinaison</translation>
        </message>
        <message>
            <source>Tip, side</source>
            <translation>Attaque, côté</translation>
        </message>
        <message>
            <source>Tip, height</source>
            <translation>Attaque, hauteur</translation>
        </message>
        <message>
            <source>Sway of the aim</source>
            <translation>Flottement</translation>
        </message>
        <message>
            <source>Tip speed</source>
            <translation>Vitesse du procédé</translation>
        </message>
        <message>
            <source>Read from the tags on the cue.</source>
            <translation>Lu sur les repères de la queue.</translation>
        </message>
        <message>
            <source>Read from the shaft over the cloth; its height is not seen.</source>
            <translation>Lu sur la flèche au-dessus du tapis ; sa hauteur ne se voit pas.</translation>
        </message>
        <message>
            <source>Between: + the ball went to the right of the cue's line.</source>
            <translation>Entre les deux : + la bille est partie à droite de la ligne de la queue.</translation>
        </message>
        <message>
            <source>The tags on the cue were seen in too few images before the strike.</source>
            <translation>Les repères de la queue ont été vus sur trop peu d’images avant la frappe.</translation>
        </message>
        <message>
            <source>The pitch log has a gap before this strike; let the sensor write without a break.</source>
            <translation>Le relevé d’inclinaison a un trou avant cette frappe ; laissez le capteur écrire sans interruption.</translation>
        </message>
        <message>
            <source>The pitch log has another clock than the film and was left out; start both together.</source>
            <translation>Le relevé d’inclinaison a une autre horloge que le film et a été écarté ; lancez les deux ensemble.</translation>
        </message>
        <message>
            <source>The tags are too small for this camera; it needs %1.</source>
            <translation>Les repères sont trop petits pour cette caméra ; il lui faut %1.</translation>
        </message>
    </context>
    <context>
        <name>DrillCharts</name>
        <message>
            <source>Number of tries under each run; whiskers are 95 % intervals, hollow dots rest on too few.</source>
            <translation>Nombre d’essais sous chaque série ; les traits sont des intervalles à 95 %, les points creux reposent sur trop peu d’essais.</translation>
        </message>
    </context>
    <context>
        <name>DrillWords</name>
        <message>
            <source>Centre-line there and back</source>
            <translation>Aller et retour sur la ligne médiane</translation>
        </message>
        <message>
            <source>The cue ball alone, from the head spot to the foot cushion and back over its start. Always off to one side: aim or unmeant side spin. Now left, now right: the stroke.</source>
            <translation>La blanche seule, de la mouche de tête à la bande de pied et retour sur son départ. Toujours du même côté : la visée ou un effet latéral involontaire. Tantôt à gauche, tantôt à droite : le geste.</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>Échelle d’arrêts en ligne</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer. The cue ball stops within one ball's width of the contact. Stay on a rung until eight of ten succeed.</source>
            <translation>Billes en ligne à quatre distances, chacune un peu plus longue. La blanche s’arrête à moins d’une bille du contact. Rester sur un échelon jusqu’à réussir huit fois sur dix.</translation>
        </message>
        <message>
            <source>Straight follow bands</source>
            <translation>Coulés en ligne par zones</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball follows into the first, second or third band behind the contact. Say the band before the stroke.</source>
            <translation>Une bille en ligne ; la blanche suit jusqu’à la première, deuxième ou troisième zone après le contact. Annoncer la zone avant le coup.</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>Rétros en ligne par zones</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball comes back into the band that is called: stop, a quarter, a half or three quarters of the table's width.</source>
            <translation>Une bille en ligne ; la blanche revient dans la zone annoncée : arrêt, un quart, la moitié ou trois quarts de la largeur de table.</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>Tirage vers la bande de tête</translation>
        </message>
        <message>
            <source>From behind the head string to the foot cushion and back. The cue ball rests within half a diamond of the head cushion.</source>
            <translation>De derrière la ligne de tête jusqu’à la bande de pied et retour. La blanche s’arrête à moins d’un demi-losange de la bande de tête.</translation>
        </message>
        <message>
            <source>Bare-table stop lines</source>
            <translation>Lignes d’arrêt sur table vide</translation>
        </message>
        <message>
            <source>The cue ball alone, to four lines in turn of distance: the middle, the foot cushion, the middle on the way back, and the head string's far side on the way back.</source>
            <translation>La blanche seule, vers quatre lignes de plus en plus lointaines : le milieu, la bande de pied, le milieu au retour, et au-delà de la ligne de tête au retour.</translation>
        </message>
        <message>
            <source>Object-ball pace to the rail</source>
            <translation>Allure de la bille visée vers la bande</translation>
        </message>
        <message>
            <source>A full hit sends the object ball down the table; it rests within half a diamond of the foot cushion.</source>
            <translation>Une touche pleine envoie la bille visée en bout de table ; elle s’arrête à moins d’un demi-losange de la bande de pied.</translation>
        </message>
        <message>
            <source>Cut fan</source>
            <translation>Éventail de coupes</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball half a table's width away: straight, then cuts of 15, 30, 45 and 60 degrees. Misses on one side at every angle are aim; thick at every angle is throw not allowed for.</source>
            <translation>La bille sur la mouche de pied, la blanche à une demi-largeur de table : en ligne, puis coupes de 15, 30, 45 et 60 degrés. Manquer d’un même côté à chaque angle, c’est la visée ; trop plein à chaque angle, c’est l’entraînement oublié.</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>Longues coupes depuis la mouche de pied</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball behind the head string: long cuts of about 33, 47 and 60 degrees.</source>
            <translation>La bille sur la mouche de pied, la blanche derrière la ligne de tête : longues coupes d’environ 33, 47 et 60 degrés.</translation>
        </message>
        <message>
            <source>Rail-frozen ball cut</source>
            <translation>Bille collée à la bande</translation>
        </message>
        <message>
            <source>The ball touches the long cushion; send it along the cushion into the corner. Watch whether ball or cushion is met first.</source>
            <translation>La bille touche la grande bande ; l’envoyer le long de la bande dans le coin. Observer si la bille ou la bande est touchée d’abord.</translation>
        </message>
        <message>
            <source>Side-pocket pair</source>
            <translation>Paire de poche latérale</translation>
        </message>
        <message>
            <source>One ball before the side pocket, cut from the head and from the foot. The pocket takes little at this angle: pace decides.</source>
            <translation>Une bille devant la poche latérale, coupée depuis la tête et depuis le pied. La poche accepte peu sous cet angle : l’allure décide.</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>Coupe fine</translation>
        </message>
        <message>
            <source>A cut of about 65 degrees into the corner; the cue ball must stay on the table. Note which side the misses go to.</source>
            <translation>Une coupe d’environ 65 degrés dans le coin ; la blanche doit rester sur la table. Noter de quel côté vont les manqués.</translation>
        </message>
        <message>
            <source>Stun to the mark</source>
            <translation>Bloqué jusqu’au repère</translation>
        </message>
        <message>
            <source>A stun shot: the cue ball leaves along the tangent line and meets the long cushion in the marked piece. Short of it: draw; beyond it: follow.</source>
            <translation>Un coup bloqué : la blanche part sur la tangente et touche la grande bande dans la partie marquée. En deçà : du rétro ; au-delà : du coulé.</translation>
        </message>
        <message>
            <source>Three-zone cue ball</source>
            <translation>Blanche dans trois zones</translation>
        </message>
        <message>
            <source>One pot, three places for the cue ball, called in turn. Pot and landing are counted apart and together.</source>
            <translation>Une bille, trois places pour la blanche, annoncées à tour de rôle. Réussite et placement se comptent séparément et ensemble.</translation>
        </message>
        <message>
            <source>Row on the centre string</source>
            <translation>Rangée sur la ligne centrale</translation>
        </message>
        <message>
            <source>Five balls in a row across the table, cue ball in hand. Pot all of them; the cue ball touches no cushion.</source>
            <translation>Cinq billes en rangée en travers de la table, blanche en main. Les empocher toutes ; la blanche ne touche aucune bande.</translation>
        </message>
        <message>
            <source>Correct-side two-ball</source>
            <translation>Deux billes, bon côté</translation>
        </message>
        <message>
            <source>Pot the first ball and come to the right side of the second: a cut of 15 to 45 degrees from the foot half. Then pot it.</source>
            <translation>Empocher la première bille et venir du bon côté de la seconde : une coupe de 15 à 45 degrés depuis la moitié de pied. Puis l’empocher.</translation>
        </message>
        <message>
            <source>Called three-ball pattern</source>
            <translation>Suite annoncée de trois billes</translation>
        </message>
        <message>
            <source>Three balls spread out, cue ball in hand. Say order, pockets and landing places first, then play it as it was said.</source>
            <translation>Trois billes dispersées, blanche en main. Annoncer d’abord l’ordre, les poches et les placements, puis jouer comme annoncé.</translation>
        </message>
        <message>
            <source>Cue ball on the rail</source>
            <translation>Blanche à la bande</translation>
        </message>
        <message>
            <source>The cue ball touches the cushion, so that only its top can be struck. A short stroke and a level cue pot more than force.</source>
            <translation>La blanche touche la bande : seul le haut peut être frappé. Un geste court et une queue à plat réussissent mieux que la force.</translation>
        </message>
        <message>
            <source>Straight-back bank to the side</source>
            <translation>Bricole droite vers la latérale</translation>
        </message>
        <message>
            <source>The ball goes to the opposite long cushion and back into the side pocket. Note whether misses are long or short; pace changes the angle.</source>
            <translation>La bille va à la grande bande opposée et revient dans la poche latérale. Noter si les manqués sont longs ou courts ; l’allure change l’angle.</translation>
        </message>
        <message>
            <source>One-rail kick</source>
            <translation>Une bande avant</translation>
        </message>
        <message>
            <source>A blocker stands in the straight line. Meet the ball by way of one cushion; better still, leave it hidden.</source>
            <translation>Une bille barre la ligne droite. Toucher la bille par une bande ; mieux encore, la laisser cachée.</translation>
        </message>
        <message>
            <source>Two-rail kick</source>
            <translation>Deux bandes avant</translation>
        </message>
        <message>
            <source>The same by way of two cushions. Any part of the ball counts.</source>
            <translation>La même chose par deux bandes. Toute touche compte.</translation>
        </message>
        <message>
            <source>Hide-behind safety</source>
            <translation>Défense cachée</translation>
        </message>
        <message>
            <source>Meet the ball and bring the cue ball behind the two blockers, so that no straight way to the ball is left.</source>
            <translation>Toucher la bille et amener la blanche derrière les deux billes, de sorte qu’il ne reste aucune ligne droite vers elle.</translation>
        </message>
        <message>
            <source>Thin-hit distance safety</source>
            <translation>Défense fine à distance</translation>
        </message>
        <message>
            <source>A thin hit: the ball stays near the foot cushion, the cue ball comes back near the head cushion.</source>
            <translation>Une touche fine : la bille reste près de la bande de pied, la blanche revient près de la bande de tête.</translation>
        </message>
        <message>
            <source>Break control</source>
            <translation>Casse contrôlée</translation>
        </message>
        <message>
            <source>A full rack, always from the same place: pot a ball and leave the cue ball in the middle of the table.</source>
            <translation>Un triangle complet, toujours de la même place : empocher une bille et laisser la blanche au milieu de la table.</translation>
        </message>
        <message>
            <source>Open-spread run</source>
            <translation>Série ouverte</translation>
        </message>
        <message>
            <source>Balls spread apart, none near a cushion, cue ball in hand: pot all of them in any order. The balls made before a miss are counted.</source>
            <translation>Billes dispersées, aucune près d’une bande, blanche en main : les empocher toutes dans n’importe quel ordre. On compte les billes avant le premier manqué.</translation>
        </message>
        <message>
            <source>straight</source>
            <translation>en ligne</translation>
        </message>
        <message>
            <source>speed</source>
            <translation>vitesse</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>arrêt</translation>
        </message>
        <message>
            <source>follow</source>
            <translation>coulé</translation>
        </message>
        <message>
            <source>draw</source>
            <translation>rétro</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>coupe</translation>
        </message>
        <message>
            <source>aim</source>
            <translation>visée</translation>
        </message>
        <message>
            <source>long</source>
            <translation>long</translation>
        </message>
        <message>
            <source>rail</source>
            <translation>bande</translation>
        </message>
        <message>
            <source>side pocket</source>
            <translation>poche latérale</translation>
        </message>
        <message>
            <source>position</source>
            <translation>placement</translation>
        </message>
        <message>
            <source>run</source>
            <translation>série</translation>
        </message>
        <message>
            <source>bank</source>
            <translation>bricole</translation>
        </message>
        <message>
            <source>kick</source>
            <translation>bande avant</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>défense</translation>
        </message>
        <message>
            <source>break</source>
            <translation>casse</translation>
        </message>
        <message>
            <source>Jump shots: wear eye protection, keep the space around the table clear, and let nobody stand where the ball may fly.</source>
            <translation>Coups sautés : porter une protection des yeux, dégager l’espace autour de la table, et que personne ne se tienne là où la bille peut voler.</translation>
        </message>
        <message>
            <source>Power breaks: balls may leave the table; nobody stands at the foot end, bystanders stay behind the player.</source>
            <translation>Casses puissantes : des billes peuvent quitter la table ; personne au bout de pied, les spectateurs restent derrière le joueur.</translation>
        </message>
        <message>
            <source>cut %1 to the left</source>
            <translation>coupe %1 à gauche</translation>
        </message>
        <message>
            <source>cut %1 to the right</source>
            <translation>coupe %1 à droite</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>de %1</translation>
        </message>
        <message>
            <source>zone at %1 diamonds along, %2 across</source>
            <translation>zone à %1 losanges en long, %2 en travers</translation>
        </message>
        <message numerus="yes">
            <source>by way of %n cushion(s)</source>
            <translation>
                <numerusform>par %n bande</numerusform>
                <numerusform>par %n bandes</numerusform>
            </translation>
        </message>
        <message>
            <source>a ball falls</source>
            <translation>une bille tombe</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1 tombe</translation>
        </message>
        <message numerus="yes">
            <source>%1 by way of %n cushion(s) to %2</source>
            <translation>
                <numerusform>%1 par %n bande vers %2</numerusform>
                <numerusform>%1 par %n bandes vers %2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 vers %2</translation>
        </message>
        <message>
            <source>%1 rests in the zone</source>
            <translation>%1 s’arrête dans la zone</translation>
        </message>
        <message numerus="yes">
            <source>%1 is met by way of %n cushion(s)</source>
            <translation>
                <numerusform>%1 est touchée par %n bande</numerusform>
                <numerusform>%1 est touchée par %n bandes</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 is met first</source>
            <translation>%1 est touchée d’abord</translation>
        </message>
        <message>
            <source>%1 is hidden from the cue ball</source>
            <translation>%1 est cachée de la blanche</translation>
        </message>
        <message>
            <source>a cut of %1 to %2 is left on %3</source>
            <translation>il reste une coupe de %1 à %2 sur %3</translation>
        </message>
        <message>
            <source>the cue ball meets the cushion at the mark</source>
            <translation>la blanche touche la bande au repère</translation>
        </message>
        <message>
            <source>the cue ball comes back over its start</source>
            <translation>la blanche revient sur son départ</translation>
        </message>
        <message>
            <source>every ball falls</source>
            <translation>toutes les billes tombent</translation>
        </message>
        <message>
            <source>the cue ball touches no cushion</source>
            <translation>la blanche ne touche aucune bande</translation>
        </message>
        <message>
            <source>it went as it was called</source>
            <translation>c’est allé comme annoncé</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>dedans</translation>
        </message>
        <message>
            <source>%1 outside</source>
            <translation>%1 dehors</translation>
        </message>
        <message>
            <source>%1 open</source>
            <translation>%1 ouverts</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>coupe %1</translation>
        </message>
        <message>
            <source>%1 mm off</source>
            <translation>à %1 mm</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s)</source>
            <translation>
                <numerusform>%n bille</numerusform>
                <numerusform>%n billes</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: %2 diamonds along, %3 across</source>
            <translation>%1 : %2 losanges en long, %3 en travers</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>à %1 de la bande de tête</translation>
        </message>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>à %1 de la bande de pied</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>à %1 de la droite</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>à %1 de la gauche</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>aucun pour l’instant</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 sur %2</translation>
        </message>
        <message>
            <source>between %1 and %2 %</source>
            <translation>entre %1 et %2 %</translation>
        </message>
        <message>
            <source>%1, %2: not enough yet for a share</source>
            <translation>%1, %2 : pas encore assez pour une part</translation>
        </message>
        <message>
            <source>%1: %2 %, %3</source>
            <translation>%1 : %2 %, %3</translation>
        </message>
        <message>
            <source>One run more, and the two can be compared.</source>
            <translation>Encore une série, et les deux pourront être comparées.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough yet to compare: at least %n try(s) in the last run and in those before.</source>
            <translation>
                <numerusform>Pas encore assez pour comparer : au moins %n essai dans la dernière série et dans les précédentes.</numerusform>
                <numerusform>Pas encore assez pour comparer : au moins %n essais dans la dernière série et dans les précédentes.</numerusform>
            </translation>
        </message>
        <message>
            <source>between %1 and %2</source>
            <translation>entre %1 et %2</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): more than chance.</source>
            <translation>La dernière série diffère des précédentes de %1 points (%2) : plus que le hasard.</translation>
        </message>
        <message>
            <source>The last run is as good as those before.</source>
            <translation>La dernière série vaut les précédentes.</translation>
        </message>
        <message>
            <source>The drill has no set-up; add one.</source>
            <translation>L’exercice n’a pas de position ; en ajouter une.</translation>
        </message>
        <message>
            <source>Nothing is asked; choose what a try is to bring about.</source>
            <translation>Rien n’est demandé ; choisir ce qu’un essai doit obtenir.</translation>
        </message>
        <message>
            <source>The set-ups ask different things; give all of them the same kinds of goals.</source>
            <translation>Les positions demandent des choses différentes ; leur donner à toutes les mêmes sortes de buts.</translation>
        </message>
        <message>
            <source>The number of tries must be from 1 to %1.</source>
            <translation>Le nombre d’essais doit être de 1 à %1.</translation>
        </message>
        <message>
            <source>%1 is asked for but does not lie on the table; put it there.</source>
            <translation>%1 est demandée mais n’est pas sur la table ; l’y poser.</translation>
        </message>
        <message>
            <source>A goal lacks its ball, pocket or zone; choose it.</source>
            <translation>Il manque à un but sa bille, sa poche ou sa zone ; la choisir.</translation>
        </message>
        <message>
            <source>%1 lies there twice; take one away.</source>
            <translation>%1 est là deux fois ; en retirer une.</translation>
        </message>
        <message>
            <source>%1 lies off the playing surface; move it.</source>
            <translation>%1 est hors de la surface de jeu ; la déplacer.</translation>
        </message>
        <message>
            <source>%1 and %2 overlap; move one of them.</source>
            <translation>%1 et %2 se chevauchent ; déplacer l’une d’elles.</translation>
        </message>
        <message>
            <source>So many balls do not find room so far apart; ask for fewer or let them lie closer.</source>
            <translation>Tant de billes ne trouvent pas place si loin l’une de l’autre ; en demander moins ou les rapprocher.</translation>
        </message>
        <message>
            <source>A zone lies beyond the cushions; move it.</source>
            <translation>Une zone dépasse les bandes ; la déplacer.</translation>
        </message>
        <message>
            <source>%1 cannot be cut that thinly; move a ball or choose another pocket.</source>
            <translation>%1 ne peut être coupée si fin ; déplacer une bille ou choisir une autre poche.</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): may be chance.</source>
            <translation>La dernière série diffère des précédentes de %1 points (%2) : peut-être le hasard.</translation>
        </message>
        <message>
            <source>So small a difference takes more tries to show than anyone plays.</source>
            <translation>Montrer une si petite différence demande plus d’essais que personne n’en joue.</translation>
        </message>
        <message>
            <source>About %1 tries before and as many after would tell.</source>
            <translation>Environ %1 essais avant et autant après trancheraient.</translation>
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
            <translation>Séances où personne d’autre n’a joué</translation>
        </message>
        <message>
            <source>Frames of these sessions</source>
            <translation>Manches de ces séances</translation>
        </message>
        <message>
            <source>Placed balls of these sessions</source>
            <translation>Billes placées de ces séances</translation>
        </message>
        <message>
            <source>Table fingerprints of these sessions</source>
            <translation>Empreintes de table de ces séances</translation>
        </message>
        <message>
            <source>Seats in sessions with others</source>
            <translation>Places dans des séances avec d’autres</translation>
        </message>
        <message>
            <source>Shots</source>
            <translation>Coups</translation>
        </message>
        <message>
            <source>Places of balls</source>
            <translation>Places de billes</translation>
        </message>
        <message>
            <source>Deliveries</source>
            <translation>Exécutions</translation>
        </message>
        <message>
            <source>Contacts and falls</source>
            <translation>Contacts et chutes</translation>
        </message>
        <message>
            <source>Pocketed balls</source>
            <translation>Billes empochées</translation>
        </message>
        <message>
            <source>Tracks</source>
            <translation>Trajectoires</translation>
        </message>
        <message>
            <source>Rulings</source>
            <translation>Décisions</translation>
        </message>
        <message>
            <source>Suggestions</source>
            <translation>Suggestions</translation>
        </message>
        <message>
            <source>Accounts of misses</source>
            <translation>Analyses d’échecs</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>Corrections</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notes</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Étiquettes</translation>
        </message>
        <message>
            <source>Lines of consent</source>
            <translation>Lignes de consentement</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Groupes</translation>
        </message>
        <message>
            <source>Sessions under way</source>
            <translation>Séances en cours</translation>
        </message>
        <message>
            <source>Notes about others that lose their author's name</source>
            <translation>Notes sur d’autres qui perdent le nom de leur auteur</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose their author's name</source>
            <translation>Corrections de coups d’autres qui perdent le nom de leur auteur</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose the name</source>
            <translation>Corrections de coups d’autres qui perdent le nom</translation>
        </message>
        <message>
            <source>Rulings on others' shots that lose the name</source>
            <translation>Décisions sur des coups d’autres qui perdent le nom</translation>
        </message>
        <message>
            <source>What goes with %1</source>
            <translation>Ce qui part avec %1</translation>
        </message>
        <message>
            <source>The player's name, playing hand and whether a minor</source>
            <translation>Le nom du joueur, sa main de jeu et s’il est mineur</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Films: the files are yours and are deleted only when you ask for it</source>
            <translation>Films : les fichiers sont à vous et ne sont supprimés que si vous le demandez</translation>
        </message>
        <message>
            <source>%1 (others play in it too: it stays in the record)</source>
            <translation>%1 (d’autres y jouent aussi : il reste dans le carnet)</translation>
        </message>
        <message>
            <source>%1 (the record forgets it)</source>
            <translation>%1 (le carnet l’oublie)</translation>
        </message>
        <message>
            <source>Texts of others with the name, which is taken out</source>
            <translation>Textes d’autres avec le nom, qui en est retiré</translation>
        </message>
        <message>
            <source>"%1" becomes "%2"</source>
            <translation>« %1 » devient « %2 »</translation>
        </message>
        <message>
            <source>Older copies beside the record that hold the name</source>
            <translation>Copies plus anciennes à côté du carnet qui contiennent le nom</translation>
        </message>
        <message>
            <source>What stays</source>
            <translation>Ce qui reste</translation>
        </message>
        <message>
            <source>Others' shots in sessions with this player: %1, with %2 places of balls, which name nobody</source>
            <translation>Coups d’autres dans des séances avec ce joueur : %1, avec %2 places de billes, qui ne nomment personne</translation>
        </message>
        <message>
            <source>Consents of others that name this person as giver or writer, as evidence: %1</source>
            <translation>Consentements d’autres qui nomment cette personne comme donneur ou rédacteur, comme preuve : %1</translation>
        </message>
        <message>
            <source>A random number without a name, so that no merge brings the player back</source>
            <translation>Un nombre aléatoire sans nom, pour qu’aucune fusion ne ramène le joueur</translation>
        </message>
        <message>
            <source>Reports, exports and copies that were made of the record elsewhere</source>
            <translation>Rapports, exports et copies du carnet faits ailleurs</translation>
        </message>
        <message>
            <source>%1 was deleted.</source>
            <translation>%1 a été supprimé.</translation>
        </message>
        <message>
            <source>%1 was not there any more.</source>
            <translation>%1 n’était plus là.</translation>
        </message>
        <message>
            <source>%1 is another file by now and was left alone.</source>
            <translation>%1 est entre-temps un autre fichier et a été laissé tel quel.</translation>
        </message>
        <message>
            <source>%1 could not be deleted (%2); delete it yourself.</source>
            <translation>%1 n’a pas pu être supprimé (%2) ; supprimez-le vous-même.</translation>
        </message>
        <message>
            <source>The record's file could not be written anew, because another program uses it or the disk is full: old pages may still hold the name. Close the other programs and run "ferrule erase --compact" with the same name.</source>
            <translation>Le fichier du carnet n’a pas pu être réécrit, parce qu’un autre programme l’utilise ou que le disque est plein : d’anciennes pages peuvent encore contenir le nom. Fermez les autres programmes et lancez « ferrule erase --compact » avec le même nom.</translation>
        </message>
        <message>
            <source>The name is nowhere in the record's files any more.</source>
            <translation>Le nom ne figure plus nulle part dans les fichiers du carnet.</translation>
        </message>
        <message>
            <source>The name, or its letters within other words, still stands in the record's files: %1 times.</source>
            <translation>Le nom, ou ses lettres dans d’autres mots, figure encore dans les fichiers du carnet : %1 fois.</translation>
        </message>
        <message>
            <source>%1 was erased.</source>
            <translation>%1 a été effacé.</translation>
        </message>
        <message>
            <source>Runs of drills</source>
            <translation>Séries d’exercices</translation>
        </message>
        <message>
            <source>Tries in these runs</source>
            <translation>Essais de ces séries</translation>
        </message>
    </context>
    <context>
        <name>ErrorSentence</name>
        <message>
            <source>%1 is a folder; choose a file in it.</source>
            <translation>%1 est un dossier ; choisissez un fichier qu’il contient.</translation>
        </message>
        <message>
            <source>%1 cannot be read (%2); check its permissions.</source>
            <translation>%1 ne peut pas être lu (%2) ; vérifiez ses droits d’accès.</translation>
        </message>
        <message>
            <source>%1 has an unusable value for "%2"; correct it.</source>
            <translation>%1 contient une valeur inutilisable pour « %2 » ; corrigez-la.</translation>
        </message>
        <message>
            <source>%1 gives %3 for "%2", outside %4 to %5; measure it again.</source>
            <translation>%1 donne %3 pour « %2 », hors de la plage de %4 à %5 ; mesurez de nouveau.</translation>
        </message>
        <message>
            <source>%1 is %2 but %3 was made at %4; calibrate the rig on a film of this size.</source>
            <translation>%1 fait %2, mais %3 a été fait en %4 ; faites le calage sur un film de cette taille.</translation>
        </message>
        <message>
            <source>%1 is %2 but the lens %3 was made at %4, another shape of picture; calibrate the lens in the film's mode.</source>
            <translation>%1 fait %2, mais l’objectif %3 a été étalonné en %4, un autre format d’image ; étalonnez l’objectif dans le mode du film.</translation>
        </message>
        <message>
            <source>The board "%1" needs 3 to 100 columns and rows, such as 9x6; count them on the print.</source>
            <translation>La mire « %1 » doit avoir de 3 à 100 colonnes et lignes, par exemple 9x6 ; comptez-les sur l’impression.</translation>
        </message>
        <message>
            <source>The board "%1" needs its square's side in millimetres, 1 to 1000; measure it on the print.</source>
            <translation>La mire « %1 » doit indiquer le côté de ses cases en millimètres, de 1 à 1000 ; mesurez-le sur l’impression.</translation>
        </message>
        <message>
            <source>The board "%1" needs its marker's side in millimetres, smaller than the square; measure it on the print.</source>
            <translation>La mire « %1 » doit indiquer le côté de ses marqueurs en millimètres, plus petit que la case ; mesurez-le sur l’impression.</translation>
        </message>
        <message>
            <source>The board "%1" names an unknown set of markers; use the name it was printed with, such as DICT_5X5_100.</source>
            <translation>La mire « %1 » nomme un jeu de marqueurs inconnu ; utilisez le nom avec lequel elle a été imprimée, par exemple DICT_5X5_100.</translation>
        </message>
        <message>
            <source>The board "%1" has more squares than its set of markers can fill; check the counts or name a larger set.</source>
            <translation>La mire « %1 » a plus de cases que son jeu de marqueurs ne peut en remplir ; vérifiez les nombres ou indiquez un jeu plus grand.</translation>
        </message>
        <message>
            <source>"%1" does not fit on this paper with its margins; choose larger paper or smaller squares.</source>
            <translation>« %1 » ne tient pas sur ce papier avec ses marges ; choisissez un papier plus grand ou des cases plus petites.</translation>
        </message>
        <message>
            <source>The printer drew the board "%1" %2 mm across and %3 mm down where both should be equal; print it again without fitting it to the page.</source>
            <translation>L’imprimante a tracé la mire « %1 » avec %2 mm en largeur et %3 mm en hauteur, alors que les deux devraient être égaux ; réimprimez-la sans l’ajuster à la page.</translation>
        </message>
        <message>
            <source>The board "%1" is not in the form chessboard:9x6:25 or charuco:8x6:40:30:DICT_5X5_100; write it so.</source>
            <translation>La mire « %1 » n’est pas de la forme chessboard:9x6:25 ou charuco:8x6:40:30:DICT_5X5_100 ; écrivez-la ainsi.</translation>
        </message>
        <message>
            <source>(%1 % of the cells there, %2 % are needed); add stills with the board there.</source>
            <translation>(%1 % des cellules à cet endroit, il en faut %2 %) ; ajoutez des photos avec la mire à cet endroit.</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the left of the picture %2</source>
            <translation>Les photos de %1 ne montrent guère la mire à gauche de l’image %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the right of the picture %2</source>
            <translation>Les photos de %1 ne montrent guère la mire à droite de l’image %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the top of the picture %2</source>
            <translation>Les photos de %1 ne montrent guère la mire en haut de l’image %2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the bottom of the picture %2</source>
            <translation>Les photos de %1 ne montrent guère la mire en bas de l’image %2</translation>
        </message>
        <message>
            <source>The stills of %1 show the board in too little of the picture (%2 %, %3 % are needed); add stills with the board in the empty parts.</source>
            <translation>Les photos de %1 montrent la mire dans une trop petite partie de l’image (%2 %, il en faut %3 %) ; ajoutez des photos avec la mire dans les parties vides.</translation>
        </message>
        <message>
            <source>The cushions in %1 fit no camera over this table; check the table's size in the table file.</source>
            <translation>Les bandes vues dans %1 ne correspondent à aucune caméra au-dessus de cette table ; vérifiez les dimensions dans le fichier de table.</translation>
        </message>
        <message>
            <source>No lens explains the stills of %1; check the board's counts and take stills with the board tilted.</source>
            <translation>Aucun objectif n’explique les photos de %1 ; vérifiez les nombres de la mire et prenez des photos avec la mire inclinée.</translation>
        </message>
        <message>
            <source>The stills of %1 do not fix the lens out to the corners of the picture; add stills with the board in the corners.</source>
            <translation>Les photos de %1 ne déterminent pas l’objectif jusqu’aux coins de l’image ; ajoutez des photos avec la mire dans les coins.</translation>
        </message>
        <message>
            <source>%1 holds a lens that cannot be used (%2); calibrate it again.</source>
            <translation>%1 contient un objectif inutilisable (%2) ; étalonnez-le de nouveau.</translation>
        </message>
        <message>
            <source>%1 lists %2 tags and %3 are needed; measure the tags into a table file, or set up from the table itself.</source>
            <translation>%1 indique %2 repères et il en faut %3 ; mesurez les repères dans un fichier de table, ou faites le calage d’après la table elle-même.</translation>
        </message>
        <message>
            <source>%1 shows the noses of %2 cushions, and every side of the table is needed; film the whole table from above, in even light, without people before it.</source>
            <translation>%1 montre les nez de %2 bandes, et il faut tous les côtés de la table ; filmez la table entière de dessus, sous une lumière régulière, sans personne devant.</translation>
        </message>
        <message>
            <source>%1 shows %2 of the projected tags on the cloth and %3 are needed; darken the room, clear the table, and let the projector's picture cover most of it.</source>
            <translation>%1 montre %2 des repères projetés sur le tapis et il en faut %3 ; assombrissez la salle, débarrassez la table et laissez l’image du projecteur en couvrir la plus grande partie.</translation>
        </message>
        <message>
            <source>%1 shows %2 of the table's tags and %3 are needed; uncover or light them, and check the set of markers in the table file.</source>
            <translation>%1 montre %2 des repères de la table et il en faut %3 ; découvrez-les ou éclairez-les, et vérifiez le jeu de marqueurs dans le fichier de table.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 twice; cover or remove one of them.</source>
            <translation>%1 montre deux fois le repère %2 ; couvrez ou retirez l’un des deux.</translation>
        </message>
        <message>
            <source>%1 shows the projected tag %2 twice; switch off the second projector or the other grid.</source>
            <translation>%1 montre deux fois le repère projeté %2 ; éteignez le second projecteur ou l’autre grille.</translation>
        </message>
        <message>
            <source>The projected tags in %1 do not lie as one picture on a flat cloth (%2 mm off); check that the grid file belongs to the picture that was sent, and that camera and projector stood still.</source>
            <translation>Les repères projetés dans %1 ne forment pas une seule image sur un tapis plan (écart de %2 mm) ; vérifiez que le fichier de grille correspond à l’image envoyée et que la caméra et le projecteur n’ont pas bougé.</translation>
        </message>
        <message>
            <source>%1 shows tags %2 and %3 in each other's place; swap them, or correct the table file.</source>
            <translation>%1 montre les repères %2 et %3 intervertis ; échangez-les, ou corrigez le fichier de table.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 turned by %3 degrees from what the table file says; turn it, or correct the file.</source>
            <translation>%1 montre le repère %2 tourné de %3 degrés par rapport à ce que dit le fichier de table ; tournez-le, ou corrigez le fichier.</translation>
        </message>
        <message>
            <source>%1 shows tag %2 about %3 mm from where the table file says; measure it again, and check that the lens belongs to this camera.</source>
            <translation>%1 montre le repère %2 à environ %3 mm de l’endroit indiqué par le fichier de table ; mesurez-le de nouveau, et vérifiez que l’objectif est bien celui de cette caméra.</translation>
        </message>
        <message>
            <source>%1 shows tags that fit no camera position; check the table file and the lens.</source>
            <translation>%1 montre des repères qui ne correspondent à aucune position de caméra ; vérifiez le fichier de table et l’objectif.</translation>
        </message>
        <message>
            <source>the turn of the picture</source>
            <translation>la rotation de l’image</translation>
        </message>
        <message>
            <source>the image size</source>
            <translation>la taille de l’image</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>l’objectif</translation>
        </message>
        <message>
            <source>the camera's place</source>
            <translation>la position de la caméra</translation>
        </message>
        <message>
            <source>There is no file %1; check the path.</source>
            <translation>Le fichier %1 n’existe pas ; vérifiez le chemin.</translation>
        </message>
        <message>
            <source>%1 is empty; copy or export it again.</source>
            <translation>%1 est vide ; copiez-le ou exportez-le de nouveau.</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another folder.</source>
            <translation>%1 ne peut pas être écrit (%2) ; choisissez un autre dossier.</translation>
        </message>
        <message>
            <source>%1 is not in the expected form (%2); make it again or correct it.</source>
            <translation>%1 n’a pas la forme attendue (%2) ; refaites-le ou corrigez-le.</translation>
        </message>
        <message>
            <source>%1 has no value for "%2"; add it.</source>
            <translation>%1 n’a pas de valeur pour « %2 » ; ajoutez-la.</translation>
        </message>
        <message>
            <source>%1 is not a film that can be read; export it again as MP4 or MKV.</source>
            <translation>%1 n’est pas un film lisible ; exportez-le de nouveau en MP4 ou MKV.</translation>
        </message>
        <message>
            <source>%1 holds sound but no picture; choose the film itself.</source>
            <translation>%1 contient du son mais pas d’image ; choisissez le film lui-même.</translation>
        </message>
        <message>
            <source>%1 breaks off before its first whole image; copy it from the camera again.</source>
            <translation>%1 s’interrompt avant sa première image complète ; copiez-le de nouveau depuis la caméra.</translation>
        </message>
        <message>
            <source>%1 is not a picture that can be read; leave it out or export it again as JPEG or PNG.</source>
            <translation>%1 n’est pas une image lisible ; laissez-la de côté ou exportez-la de nouveau en JPEG ou PNG.</translation>
        </message>
        <message>
            <source>%1 is %2 while the stills before it are %3; use stills of one camera at one size.</source>
            <translation>%1 fait %2 alors que les photos précédentes font %3 ; utilisez des photos d’une seule caméra, d’une seule taille.</translation>
        </message>
        <message>
            <source>Every still that shows the board "%1" is blurred; focus, expose shorter or put the board down, and take them again.</source>
            <translation>Toutes les photos qui montrent la mire « %1 » sont floues ; faites la mise au point, réduisez le temps de pose ou posez la mire, et reprenez-les.</translation>
        </message>
        <message>
            <source>None of %2 stills shows the whole board "%1"; check its counts and keep it flat, sharp and in the picture.</source>
            <translation>Aucune des %2 photos ne montre la mire « %1 » entière ; vérifiez ses nombres et gardez-la plane, nette et dans l’image.</translation>
        </message>
        <message>
            <source>The stills show the board "%1" in the old layout, with the markers on the other squares; print it again, or use one with an odd number of rows.</source>
            <translation>Les photos montrent la mire « %1 » dans l’ancienne disposition, avec les marqueurs sur les autres cases ; réimprimez-la, ou utilisez-en une avec un nombre impair de lignes.</translation>
        </message>
        <message>
            <source>The grid in %1 is mirrored; switch off the projector's mirror or rear setting.</source>
            <translation>La grille dans %1 est inversée ; désactivez l’effet miroir ou la rétroprojection du projecteur.</translation>
        </message>
        <message>
            <source>%1 is mirrored; switch off the mirror setting of the camera and film again.</source>
            <translation>%1 est inversé comme dans un miroir ; désactivez l’effet miroir de la caméra et filmez de nouveau.</translation>
        </message>
        <message>
            <source>Only %2 stills show the board %1 well enough and %3 are needed; take more.</source>
            <translation>Seules %2 photos montrent assez bien la mire %1 et il en faut %3 ; prenez-en d’autres.</translation>
        </message>
        <message>
            <source>%1 corrects %2 twice; make the rig again from the film and the lens as they came.</source>
            <translation>%1 corrige deux fois %2 ; refaites le calage à partir du film et de l’objectif d’origine.</translation>
        </message>
        <message>
            <source>No balls were found in %1; check that the rig and the table file belong to this film.</source>
            <translation>Aucune bille n’a été trouvée dans %1 ; vérifiez que le calage et le fichier de table sont bien ceux de ce film.</translation>
        </message>
        <message>
            <source>%1 is in use by another program; close it there and try again.</source>
            <translation>%1 est utilisé par un autre programme ; fermez-le dans cet autre programme et réessayez.</translation>
        </message>
        <message>
            <source>%1 may only be read; copy it to a folder of your own.</source>
            <translation>%1 est en lecture seule ; copiez-le dans un dossier à vous.</translation>
        </message>
        <message>
            <source>%1 may only be read (%2); copy it to a folder of your own.</source>
            <translation>%1 est en lecture seule (%2) ; copiez-le dans un dossier à vous.</translation>
        </message>
        <message>
            <source>%1 was written by a later version (form %2, this one knows %3); update this program.</source>
            <translation>%1 a été écrit par une version plus récente (format %2, celle-ci connaît %3) ; mettez ce programme à jour.</translation>
        </message>
        <message>
            <source>%1 is not a record; choose another file.</source>
            <translation>%1 n’est pas un carnet ; choisissez un autre fichier.</translation>
        </message>
        <message>
            <source>%1 is not a record (%2); choose another file.</source>
            <translation>%1 n’est pas un carnet (%2) ; choisissez un autre fichier.</translation>
        </message>
        <message>
            <source>There is no room left to write %1; free some disk space. Nothing that was saved is lost.</source>
            <translation>Il n’y a plus de place pour écrire %1 ; libérez de l’espace sur le disque. Rien de ce qui était enregistré n’est perdu.</translation>
        </message>
        <message>
            <source>%1 is damaged (%2); open the newest backup beside it.</source>
            <translation>%1 est endommagé (%2) ; ouvrez la sauvegarde la plus récente, juste à côté.</translation>
        </message>
        <message>
            <source>%1 is already in the record; choose another name.</source>
            <translation>%1 est déjà dans le carnet ; choisissez un autre nom.</translation>
        </message>
        <message>
            <source>%1 is already in the record as session "%2"; add --again to measure it once more beside it.</source>
            <translation>%1 est déjà dans le carnet comme séance « %2 » ; ajoutez --again pour le mesurer une fois de plus à côté.</translation>
        </message>
        <message>
            <source>%1 leaves no legal shot: no ball that may be played is on the table or can be reached; check the balls, the game and the group.</source>
            <translation>%1 ne laisse aucun coup permis : aucune bille jouable n’est sur la table ou ne peut être atteinte ; vérifiez les billes, le jeu et le groupe.</translation>
        </message>
        <message>
            <source>There is no %1 in %2; check the spelling.</source>
            <translation>%2 ne contient pas %1 ; vérifiez l’orthographe.</translation>
        </message>
        <message>
            <source>%1 strikes the ball %2 radii from its centre, past the miscue limit of %3; move the tip point inward.</source>
            <translation>%1 frappe la bille à %2 rayons de son centre, au-delà de la limite de fausse queue de %3 ; ramenez le point d’attaque vers le centre.</translation>
        </message>
        <message>
            <source>%1 has the balls %2 overlapping by %3 mm, more than %4; correct their places.</source>
            <translation>Dans %1, les billes %2 se chevauchent de %3 mm, plus que %4 ; corrigez leur position.</translation>
        </message>
        <message>
            <source>%1 has the ball %2 outside the table; correct its place.</source>
            <translation>Dans %1, la bille %2 est hors de la table ; corrigez sa position.</translation>
        </message>
        <message>
            <source>Stopped before the end; what was recorded until then is kept.</source>
            <translation>Arrêté avant la fin ; ce qui était enregistré jusque-là est conservé.</translation>
        </message>
    </context>
    <context>
        <name>FigureWords</name>
        <message>
            <source>not enough yet: two sessions with %1 or more are needed</source>
            <translation>pas encore assez : il faut deux séances d’au moins %1</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>Dispersion de la visée</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>Dispersion de la vitesse sur positions répétées</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>Dispersion de la vitesse</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>Exécutions sur la cible</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>Carte des coups manqués</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>De quel côté sont les erreurs</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>Réussite par poche</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>Vitesse demandée et obtenue</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>Où la blanche s’est arrêtée</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>Où le procédé a touché la bille</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>Coups comparables dans d’autres conditions</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>Exercice : %1</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>Exercice</translation>
        </message>
        <message>
            <source>no run of a drill in this selection</source>
            <translation>aucune série d’exercice dans cette sélection</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Choix et exécution</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>Placement pour la bille suivante</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>Chances annoncées et chances réalisées</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>Le jeu</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>Défenses et ce qui a suivi</translation>
        </message>
        <message>
            <source>no safety in this selection</source>
            <translation>aucune défense dans cette sélection</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>Réussies selon l’entrée dans la poche</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>Réussite, par coupe et distance de la blanche</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>Réussite, par coupe et distance à la poche</translation>
        </message>
    </context>
    <context>
        <name>FilmWords</name>
        <message>
            <source>No film is kept: the consent of %1 to being filmed has run out; note a new one in Players.</source>
            <translation>Aucun film n’est gardé : le consentement de %1 à être filmé a expiré ; notez-en un nouveau dans Joueurs.</translation>
        </message>
        <message>
            <source>No film is kept: %1 has withdrawn the consent to being filmed.</source>
            <translation>Aucun film n’est gardé : %1 a retiré son consentement à être filmé.</translation>
        </message>
        <message>
            <source>No film is kept: for %1, a minor, a guardian must consent; note it in Players.</source>
            <translation>Aucun film n’est gardé : pour %1, mineur, un tuteur doit consentir ; notez-le dans Joueurs.</translation>
        </message>
        <message>
            <source>No film is kept: no consent of %1 to being filmed is noted in Players.</source>
            <translation>Aucun film n’est gardé : aucun consentement de %1 à être filmé n’est noté dans Joueurs.</translation>
        </message>
        <message>
            <source>No film is kept: name those who play, so that their consent can be looked up.</source>
            <translation>Aucun film n’est gardé : nommez ceux qui jouent, pour que leur consentement puisse être vérifié.</translation>
        </message>
        <message>
            <source>No film is kept: these players' consents to being filmed are missing or no longer hold: %1.</source>
            <translation>Aucun film n’est gardé : le consentement de ces joueurs manque ou ne vaut plus : %1.</translation>
        </message>
        <message>
            <source>No film is kept: %1</source>
            <comment>a sentence</comment>
            <translation>Aucun film n’est gardé : %1</translation>
        </message>
        <message>
            <source>The film ended after %1 images: the disk has no room for more. Measuring goes on.</source>
            <translation>Le film s’est arrêté après %1 images : le disque n’a plus de place. La mesure continue.</translation>
        </message>
        <message>
            <source>Filming: %1 images, none dropped</source>
            <translation>Film en cours : %1 images, aucune perdue</translation>
        </message>
        <message>
            <source>Filming: %1 images, %2 dropped</source>
            <translation>Film en cours : %1 images, %2 perdues</translation>
        </message>
    </context>
    <context>
        <name>FirstPage</name>
        <message>
            <source>There is no shot of this player in this period, so there is nothing to report. Choose another period, or measure a film first.</source>
            <translation>Il n’y a aucun coup de ce joueur dans cette période, donc rien à dire. Choisissez une autre période, ou mesurez d’abord un film.</translation>
        </message>
        <message>
            <source>In short</source>
            <translation>En bref</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>du %1 au %2</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>à partir du %1</translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>jusqu’au %1</translation>
        </message>
        <message>
            <source>the whole record</source>
            <translation>tout le carnet</translation>
        </message>
        <message>
            <source>Progress report</source>
            <translation>Bilan de progression</translation>
        </message>
        <message>
            <source>%1 hours</source>
            <translation>%1 heures</translation>
        </message>
        <message>
            <source>How many balls go in cannot be said yet (%1).</source>
            <translation>On ne peut pas encore dire combien de billes rentrent (%1).</translation>
        </message>
        <message>
            <source>Whether anything changed cannot be said yet: that takes at least %1 with enough shots.</source>
            <translation>On ne peut pas encore dire si quelque chose a changé : il faut pour cela au moins %1 avec assez de coups.</translation>
        </message>
        <message>
            <source>Over these weeks nothing changed by more than luck alone would bring about. That is usual for so short a time and no verdict on the practice.</source>
            <translation>Au cours de ces semaines, rien n’a changé plus que le hasard seul ne le ferait. C’est habituel sur une période si courte, et ce n’est pas un jugement sur l’entraînement.</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>Il n’y a pas encore de quoi dire sur quoi travailler d’abord ; chaque séance de plus aide.</translation>
        </message>
        <message>
            <source>To work on first: %1. The drill is “%2”.</source>
            <translation>À travailler d’abord : %1. L’exercice est « %2 ».</translation>
        </message>
        <message>
            <source>What we can be sure of</source>
            <translation>Ce qui est sûr</translation>
        </message>
        <message>
            <source>Nothing stands out beyond luck in this period.</source>
            <translation>Rien ne dépasse le hasard sur cette période.</translation>
        </message>
        <message>
            <source>Also looked at, and no more than luck: %1.</source>
            <translation>Examiné aussi, sans rien au-delà du hasard : %1.</translation>
        </message>
        <message>
            <source>Not enough shots or sessions yet: %1.</source>
            <translation>Pas encore assez de coups ou de séances : %1.</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>À travailler</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>Drill: %1. %2</source>
            <translation>Exercice : %1. %2</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>Ce point et le suivant se valent à peu près ; commencez par l’un ou par l’autre.</translation>
        </message>
        <message>
            <source>The order is by frames won: the player's own shots are played again in the simulator, with one part of the scatter a fifth smaller. A simulation is a guide, not a promise.</source>
            <translation>L’ordre suit les parties gagnées : les coups du joueur lui-même sont rejoués dans le simulateur, avec une part de la dispersion réduite d’un cinquième. Une simulation est un guide, pas une promesse.</translation>
        </message>
        <message>
            <source>The order comes from a simple rule: the lines on which the balls ran are judged again with one cause taken away. Position, speed and choice of shot are not judged by it.</source>
            <translation>L’ordre vient d’une règle simple : les lignes suivies par les billes sont jugées de nouveau sans l’une des causes. Elle ne juge ni le placement, ni la vitesse, ni le choix du coup.</translation>
        </message>
        <message>
            <source>How far to trust this</source>
            <translation>Jusqu’où s’y fier</translation>
        </message>
        <message>
            <source>Every one of these shots was corrected by a person; nothing rests on the camera alone.</source>
            <translation>Tous ces coups ont été corrigés à la main ; rien ne repose sur la caméra seule.</translation>
        </message>
        <message>
            <source>Still waiting for a person's word: %1.</source>
            <translation>En attente de l’avis d’une personne : %1.</translation>
        </message>
        <message>
            <source>The pocket was named by a person for %1 pots and read from the balls for %2; the two are not mixed.</source>
            <translation>La poche a été indiquée par une personne pour %1 tentatives et déduite des billes pour %2 ; les deux cas ne sont pas mélangés.</translation>
        </message>
        <message>
            <source>Left out: %1 on the table “%2”, whose pockets are of another width (%3 mm at the corners).</source>
            <translation>Laissé de côté : %1 sur la table « %2 », dont les poches ont une autre largeur (%3 mm aux coins).</translation>
        </message>
        <message>
            <source>Dated in the future: %1; set the clock of the camera or computer.</source>
            <translation>Daté dans le futur : %1 ; réglez l’horloge de la caméra ou de l’ordinateur.</translation>
        </message>
        <message>
            <source>A clock went back during a session (%1); times within sessions are doubtful.</source>
            <translation>Une horloge a reculé pendant une séance (%1) ; les heures au sein des séances sont douteuses.</translation>
        </message>
        <message>
            <source>For %1 the time within the session is unknown.</source>
            <translation>Heure au sein de la séance inconnue : %1.</translation>
        </message>
        <message>
            <source>The coach's note</source>
            <translation>Note de l’entraîneur</translation>
        </message>
        <message>
            <source>met</source>
            <translation>atteint</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>pas encore</translation>
        </message>
        <message>
            <source>not tried since</source>
            <translation>pas essayé depuis</translation>
        </message>
        <message>
            <source>%1; now %2</source>
            <comment>met or not yet, spread</comment>
            <translation>%1 ; maintenant %2</translation>
        </message>
        <message>
            <source>%1; since then %2 of %3 (between %4)</source>
            <comment>met or not yet, tries that met it, tries, interval</comment>
            <translation>%1 ; depuis, %2 sur %3 (entre %4)</translation>
        </message>
        <message>
            <source>Targets of the time before</source>
            <translation>Objectifs de la période précédente</translation>
        </message>
        <message>
            <source>%1 of %2 at “%3”</source>
            <translation>%1 sur %2 à « %3 »</translation>
        </message>
        <message>
            <source>scatter of %1 or less</source>
            <translation>dispersion de %1 au plus</translation>
        </message>
        <message>
            <source>The targets are those that a report on the first day of this period would have set.</source>
            <translation>Les objectifs sont ceux qu’un rapport du premier jour de cette période aurait fixés.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a count, its share</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Shots whose stroke was measured: %1. Not seen well enough: %2. Corrected by a person: %3.</source>
            <comment>each a count and its share</comment>
            <translation>Coups mesurés : %1. Pas assez visibles : %2. Corrigés à la main : %3.</translation>
        </message>
        <message>
            <source>Many shots were corrected by a person; look at the camera before the next session.</source>
            <translation>Beaucoup de coups ont été corrigés à la main ; vérifiez la caméra avant la prochaine séance.</translation>
        </message>
        <message>
            <source>No consent is recorded for: %1.</source>
            <translation>Aucun consentement enregistré pour : %1.</translation>
        </message>
        <message>
            <source>What the record knew of consent on %1:</source>
            <translation>Consentements connus au %1 :</translation>
        </message>
        <message>
            <source>Of every 100 balls that were tried, about %1 went in. Luck and good and bad days allowed for, the true number very probably lies between %2 and %3.</source>
            <translation>Sur 100 billes tentées, environ %1 sont rentrées. En tenant compte du hasard et des bons et mauvais jours, le vrai nombre se situe très probablement entre %2 et %3.</translation>
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
            <translation>%1 ; %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a name and what is told of it</comment>
            <translation>%1 : %2</translation>
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
            <translation>Coup</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>Réussite</translation>
        </message>
        <message>
            <source>Foul</source>
            <translation>Faute</translation>
        </message>
        <message>
            <source>Worth</source>
            <comment>of a shot, in hundredths of a frame</comment>
            <translation>Valeur</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Direction</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Vitesse</translation>
        </message>
        <message>
            <source>Side / height, R</source>
            <translation>Côté / hauteur, R</translation>
        </message>
        <message>
            <source>The suggestion had been shown before the shot.</source>
            <translation>La suggestion avait été montrée avant le coup.</translation>
        </message>
        <message>
            <source>Squirt</source>
            <translation>Déflexion (squirt)</translation>
        </message>
        <message>
            <source>Swerve</source>
            <translation>Courbe (swerve)</translation>
        </message>
        <message>
            <source>Throw of the cut</source>
            <translation>Décalage de coupe (throw)</translation>
        </message>
        <message>
            <source>Throw of the spin</source>
            <translation>Décalage d’effet (throw)</translation>
        </message>
        <message>
            <source>Unexplained</source>
            <translation>Inexpliqué</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>En tout</translation>
        </message>
    </context>
    <context>
        <name>JudgementSentence</name>
        <message>
            <source>what came out was %1 in 100 better than the shot is worth</source>
            <translation>le résultat dépasse de %1 sur 100 la valeur du coup</translation>
        </message>
        <message>
            <source>delivery cost %1 in 100</source>
            <translation>l’exécution a coûté %1 sur 100</translation>
        </message>
        <message>
            <source>The choice cost nothing that can be told</source>
            <translation>Le choix n’a rien coûté de perceptible</translation>
        </message>
        <message>
            <source>The choice gained %1 in 100</source>
            <translation>Le choix a rapporté %1 sur 100</translation>
        </message>
        <message>
            <source>The choice cost %1 in 100</source>
            <translation>Le choix a coûté %1 sur 100</translation>
        </message>
        <message>
            <source>No game is known for this shot, so that no plan can be set beside it.</source>
            <translation>Le jeu n’est pas connu pour ce coup ; aucune suggestion ne peut lui être comparée.</translation>
        </message>
        <message>
            <source>The frame was over.</source>
            <translation>La partie était finie.</translation>
        </message>
        <message>
            <source>Where the cue ball lay before the shot is not known.</source>
            <translation>On ne sait pas où se trouvait la blanche avant le coup.</translation>
        </message>
        <message>
            <source>No legal shot was found from this position.</source>
            <translation>Aucun coup permis n’a été trouvé depuis cette position.</translation>
        </message>
        <message>
            <source>%1; %2.</source>
            <comment>what the choice cost; what the delivery cost</comment>
            <translation>%1 ; %2.</translation>
        </message>
        <message>
            <source>Suggested: %1. What was taken could not be matched to a plan.</source>
            <translation>Suggéré : %1. Ce qui a été joué ne correspond à aucun coup calculé.</translation>
        </message>
    </context>
    <context>
        <name>LiveWords</name>
        <message>
            <source>Waiting for the first image</source>
            <translation>En attente de la première image</translation>
        </message>
        <message>
            <source>What was seen is measured to its end</source>
            <translation>Ce qui a été vu est mesuré jusqu’au bout</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand in the record</source>
            <translation>
                <numerusform>%n coup figure dans l’enregistrement</numerusform>
                <numerusform>%n coups figurent dans l’enregistrement</numerusform>
            </translation>
        </message>
        <message>
            <source>Practice without a referee</source>
            <translation>Entraînement sans arbitre</translation>
        </message>
        <message>
            <source>Waiting for the first shot</source>
            <translation>En attente du premier coup</translation>
        </message>
        <message>
            <source>%1, as far as anyone knows</source>
            <comment>whose turn it is</comment>
            <translation>%1, pour autant qu’on sache</translation>
        </message>
        <message>
            <source>Frames: %1 %2, %3 %4</source>
            <comment>name, frames, name, frames</comment>
            <translation>Parties : %1 %2, %3 %4</translation>
        </message>
        <message>
            <source>%1 images</source>
            <comment>a number that grows</comment>
            <translation>%1 images</translation>
        </message>
        <message>
            <source>none dropped</source>
            <translation>aucune perdue</translation>
        </message>
        <message numerus="yes">
            <source>%n dropped</source>
            <translation>
                <numerusform>%n perdue</numerusform>
                <numerusform>%n perdues</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the picture is %n image(s) behind</source>
            <translation>
                <numerusform>l’image affichée a %n image de retard</numerusform>
                <numerusform>l’image affichée a %n images de retard</numerusform>
            </translation>
        </message>
        <message>
            <source>The picture is too dark: put more light on the table, or let the camera expose longer.</source>
            <translation>L’image est trop sombre : éclairez davantage la table, ou laissez la caméra exposer plus longtemps.</translation>
        </message>
        <message>
            <source>Part of the picture is burnt out: dim the lamps, or let the camera expose for a shorter time.</source>
            <translation>Une partie de l’image est brûlée : baissez les lampes, ou laissez la caméra exposer moins longtemps.</translation>
        </message>
        <message>
            <source>Fast balls become streaks: the camera exposes about %1 ms; with more light it can be shorter.</source>
            <translation>Les billes rapides deviennent des traînées : la caméra expose environ %1 ms ; avec plus de lumière ce peut être moins.</translation>
        </message>
        <message>
            <source>Rig not checked at %1: %2</source>
            <comment>time, why</comment>
            <translation>Calage non vérifié à %1 : %2</translation>
        </message>
        <message>
            <source>Rig checked at %1: it fits.</source>
            <translation>Calage vérifié à %1 : il convient.</translation>
        </message>
        <message>
            <source>Rig checked at %1: %2</source>
            <comment>time, what is wrong</comment>
            <translation>Calage vérifié à %1 : %2</translation>
        </message>
    </context>
    <context>
        <name>MarkWords</name>
        <message>
            <source>the %1 pocket</source>
            <comment>a pocket's place</comment>
            <translation>la poche %1</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the left rail, from the head</source>
            <translation>mouche %1 sur %2 du cadre gauche, depuis la tête</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the right rail, from the head</source>
            <translation>mouche %1 sur %2 du cadre droit, depuis la tête</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the foot rail, from the left</source>
            <translation>mouche %1 sur %2 du cadre de pied, depuis la gauche</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the head rail, from the left</source>
            <translation>mouche %1 sur %2 du cadre de tête, depuis la gauche</translation>
        </message>
    </context>
    <context>
        <name>MeasuringWords</name>
        <message>
            <source>aim %1</source>
            <translation>visée %1</translation>
        </message>
        <message>
            <source>aim and speed not observable</source>
            <translation>visée et vitesse non observables</translation>
        </message>
        <message>
            <source>less than a minute left</source>
            <translation>encore moins d’une minute</translation>
        </message>
        <message numerus="yes">
            <source>about %n minute(s) left</source>
            <translation>
                <numerusform>encore environ %n minute</numerusform>
                <numerusform>encore environ %n minutes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>about %n hour(s) left</source>
            <translation>
                <numerusform>encore environ %n heure</numerusform>
                <numerusform>encore environ %n heures</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one</source>
            <translation>Recherche du coup à suggérer pour chacun</translation>
        </message>
        <message>
            <source>Opening the film</source>
            <translation>Ouverture du film</translation>
        </message>
        <message>
            <source>Image %1</source>
            <translation>Image %1</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>how far, time left</comment>
            <translation>%1 ; %2</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) measured in %1 of film.</source>
            <translation>
                <numerusform>%n coup mesuré en %1 de film.</numerusform>
                <numerusform>%n coups mesurés en %1 de film.</numerusform>
            </translation>
        </message>
        <message>
            <source>The film is shorter than its header says; what is there counts.</source>
            <translation>Le film est plus court que ne le dit son en-tête ; ce qu’il contient compte.</translation>
        </message>
        <message numerus="yes">
            <source>The camera moved %n time(s): shots during a move are doubtful.</source>
            <translation>
                <numerusform>La caméra a bougé %n fois : les coups joués pendant ce temps sont douteux.</numerusform>
                <numerusform>La caméra a bougé %n fois : les coups joués pendant ce temps sont douteux.</numerusform>
            </translation>
        </message>
        <message>
            <source>Read with what session "%1" told of this table.</source>
            <translation>Lu avec ce que la séance « %1 » a appris de cette table.</translation>
        </message>
        <message>
            <source>It stands beside session "%1", which holds the same film.</source>
            <translation>Elle se trouve à côté de la séance « %1 », qui contient le même film.</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand beside what would have been suggested.</source>
            <translation>
                <numerusform>%n coup est accompagné de ce qui aurait été suggéré.</numerusform>
                <numerusform>%n coups sont accompagnés de ce qui aurait été suggéré.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Stopped. %n shot(s) stand in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</source>
            <translation>
                <numerusform>Arrêté. %n coup figure dans la séance « %1 », dont la partie compte comme incomplète ; le film peut être mesuré de nouveau depuis le début à tout moment.</numerusform>
                <numerusform>Arrêté. %n coups figurent dans la séance « %1 », dont la partie compte comme incomplète ; le film peut être mesuré de nouveau depuis le début à tout moment.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>This film was measured before: session "%1" holds its %n shot(s).</source>
            <translation>
                <numerusform>Ce film a déjà été mesuré : la séance « %1 » contient son coup (%n).</numerusform>
                <numerusform>Ce film a déjà été mesuré : la séance « %1 » contient ses %n coups.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Measuring this film was broken off: session "%1" holds its first %n shot(s). Measured again, it becomes a session of its own beside that one.</source>
            <translation>
                <numerusform>La mesure de ce film a été interrompue : la séance « %1 » contient son premier coup (%n). Mesuré de nouveau, il devient une séance à part à côté de celle-ci.</numerusform>
                <numerusform>La mesure de ce film a été interrompue : la séance « %1 » contient ses %n premiers coups. Mesuré de nouveau, il devient une séance à part à côté de celle-ci.</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one, %1</source>
            <comment>share</comment>
            <translation>Recherche du coup à suggérer à côté de chacun, %1</translation>
        </message>
        <message>
            <source>Checking that film and rig belong together</source>
            <translation>Vérification que film et calage vont ensemble</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by up to %1 mm.</source>
            <translation>En l’état, la position d’une bille est fausse de %1 mm au plus.</translation>
        </message>
    </context>
    <context>
        <name>MergeSentence</name>
        <message>
            <source>Nothing of it was new.</source>
            <translation>Rien n’en était nouveau.</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s)</source>
            <translation>
                <numerusform>%n joueur</numerusform>
                <numerusform>%n joueurs</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n séance</numerusform>
                <numerusform>%n séances</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n coup</numerusform>
                <numerusform>%n coups</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n drill run(s)</source>
            <translation>
                <numerusform>%n série d’exercice</numerusform>
                <numerusform>%n séries d’exercice</numerusform>
            </translation>
        </message>
        <message>
            <source>New: %1.</source>
            <comment>a list of counts</comment>
            <translation>Nouveau : %1.</translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) had been corrected or gone on with there and are now as there.</source>
            <translation>
                <numerusform>%n partie y avait été corrigée ou poursuivie et est maintenant comme là-bas.</numerusform>
                <numerusform>%n parties y avaient été corrigées ou poursuivies et sont maintenant comme là-bas.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) were changed in both records and stay as they are here.</source>
            <translation>
                <numerusform>%n partie a été modifiée dans les deux carnets et reste telle qu’ici.</numerusform>
                <numerusform>%n parties ont été modifiées dans les deux carnets et restent telles qu’ici.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of the other record is called %2 here; if both are one person, join them in Players.</source>
            <translation>%1 de l’autre carnet s’appelle ici %2 ; si c’est la même personne, réunissez-les dans Joueurs.</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s) who were erased here were left out.</source>
            <translation>
                <numerusform>%n joueur effacé ici a été laissé de côté.</numerusform>
                <numerusform>%n joueurs effacés ici ont été laissés de côté.</numerusform>
            </translation>
        </message>
        <message>
            <source>Erased there, and still here: %1.</source>
            <translation>Effacés là-bas, encore ici : %1.</translation>
        </message>
    </context>
    <context>
        <name>MissSentence</name>
        <message>
            <source>Missed %1 by %2 (%3 at the pocket).</source>
            <translation>Manqué %1 de %2 (%3 à la poche).</translation>
        </message>
        <message>
            <source>The line was %1 off the middle of the pocket.</source>
            <translation>La ligne était à %1 du milieu de la poche.</translation>
        </message>
        <message>
            <source>It rattled in the jaws.</source>
            <translation>La bille a rebondi dans les mâchoires.</translation>
        </message>
        <message>
            <source>the aim was %1 %2 of the ghost ball</source>
            <translation>visée : %1 %2 par rapport à la bille fantôme</translation>
        </message>
        <message>
            <source>squirt made it %1 %2</source>
            <translation>déflexion (squirt) : %1 %2</translation>
        </message>
        <message>
            <source>swerve made it %1 %2</source>
            <translation>courbe (swerve) : %1 %2</translation>
        </message>
        <message>
            <source>throw of the cut made it %1 %2</source>
            <translation>décalage de coupe (throw) : %1 %2</translation>
        </message>
        <message>
            <source>throw of the side spin made it %1 %2</source>
            <translation>décalage d’effet (throw) : %1 %2</translation>
        </message>
        <message>
            <source>the speed made it %1 %2</source>
            <translation>vitesse : %1 %2</translation>
        </message>
        <message>
            <source>%1 %2 stays unexplained</source>
            <translation>part inexpliquée : %1 %2</translation>
        </message>
        <message>
            <source>The film does not tell what brought it there.</source>
            <translation>Le film ne dit pas ce qui y a conduit.</translation>
        </message>
        <message>
            <source>the cue ball was not seen for long enough</source>
            <translation>la blanche n’a pas été vue assez longtemps</translation>
        </message>
        <message>
            <source>no stroke that can be simulated goes this way</source>
            <translation>aucun coup simulable ne suit ce trajet</translation>
        </message>
        <message>
            <source>no cushion, no curve: side spin cannot be seen</source>
            <translation>ni bande, ni courbe : l’effet latéral ne se voit pas</translation>
        </message>
        <message>
            <source>side spin did too little to be seen</source>
            <translation>l’effet latéral a trop peu agi pour être vu</translation>
        </message>
        <message>
            <source>the slide was too short to tell the height of the tip</source>
            <translation>la glissade était trop courte pour révéler la hauteur d’attaque</translation>
        </message>
        <message>
            <source>no hop, no curve: the cue's elevation cannot be seen</source>
            <translation>ni saut, ni courbe : l’inclinaison de la queue ne se voit pas</translation>
        </message>
        <message>
            <source>the film begins with balls in motion</source>
            <translation>le film commence avec des billes en mouvement</translation>
        </message>
        <message>
            <source>the film ends before every ball rests</source>
            <translation>le film s’arrête avant que toutes les billes soient immobiles</translation>
        </message>
        <message>
            <source>the next strike came before every ball rested</source>
            <translation>la frappe suivante est venue avant l’arrêt de toutes les billes</translation>
        </message>
        <message>
            <source>a ball was taken up during the shot</source>
            <translation>une bille a été ramassée pendant le coup</translation>
        </message>
        <message>
            <source>a ball moved that nothing hit</source>
            <translation>une bille a bougé sans être touchée</translation>
        </message>
        <message>
            <source>balls may have been taken for each other</source>
            <translation>des billes ont pu être prises l’une pour l’autre</translation>
        </message>
        <message>
            <source>a moving ball was lost from view</source>
            <translation>une bille en mouvement a été perdue de vue</translation>
        </message>
        <message>
            <source>two balls were hit too close together to tell which came first</source>
            <translation>deux billes ont été touchées trop près l’une de l’autre pour dire laquelle en premier</translation>
        </message>
        <message>
            <source>a ball was lost on its way to a pocket</source>
            <translation>une bille a été perdue en route vers une poche</translation>
        </message>
    </context>
    <context>
        <name>NumberWords</name>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 m</source>
            <translation>%1 m</translation>
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
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1–%2 %</source>
            <comment>from, to, per cent</comment>
            <translation>%1–%2 %</translation>
        </message>
    </context>
    <context>
        <name>PeopleWords</name>
        <message>
            <source>a parent or guardian</source>
            <translation>un parent ou tuteur</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>quelqu’un</translation>
        </message>
        <message>
            <source>%1 (parent or guardian)</source>
            <translation>%1 (parent ou tuteur)</translation>
        </message>
        <message>
            <source>Ask before shots of this person are measured and kept.</source>
            <translation>Demander avant de mesurer et de garder des coups de cette personne.</translation>
        </message>
        <message>
            <source>No film is kept of this person.</source>
            <translation>Aucun film de cette personne n’est gardé.</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Inconnue</translation>
        </message>
        <message>
            <source>Right-handed</source>
            <translation>Droitier</translation>
        </message>
        <message>
            <source>Left-handed</source>
            <translation>Gaucher</translation>
        </message>
        <message>
            <source>Both hands</source>
            <translation>Les deux mains</translation>
        </message>
        <message>
            <source>Measured shots</source>
            <translation>Coups mesurés</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Film</translation>
        </message>
        <message>
            <source>Film of a minor</source>
            <translation>Film d’un mineur</translation>
        </message>
        <message>
            <source>Handing on the report</source>
            <translation>Transmission du rapport</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until %3.</source>
            <translation>Donné par %1 le %2, jusqu’au %3.</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until it is withdrawn.</source>
            <translation>Donné par %1 le %2, jusqu’à son retrait.</translation>
        </message>
        <message>
            <source>Missing.</source>
            <translation>Non recueilli.</translation>
        </message>
        <message>
            <source>Given by %1 on %2, but for a minor a parent or guardian must give it.</source>
            <translation>Donné par %1 le %2, mais pour un mineur c’est à un parent ou tuteur de le donner.</translation>
        </message>
        <message>
            <source>Expired on %1.</source>
            <translation>Expiré le %1.</translation>
        </message>
        <message>
            <source>Withdrawn by %1 on %2.</source>
            <translation>Retiré par %1 le %2.</translation>
        </message>
        <message>
            <source>%1 · %2: withdrawn by %3</source>
            <translation>%1 · %2 : retiré par %3</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3 until %4</source>
            <translation>%1 · %2 : donné par %3 jusqu’au %4</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3</source>
            <translation>%1 · %2 : donné par %3</translation>
        </message>
        <message>
            <source>, noted by %1</source>
            <translation>, noté par %1</translation>
        </message>
        <message>
            <source>, taken back as a mistake</source>
            <translation>, repris comme erreur</translation>
        </message>
        <message>
            <source>guest</source>
            <translation>invité</translation>
        </message>
        <message>
            <source>no consent</source>
            <translation>sans consentement</translation>
        </message>
        <message>
            <source>no film</source>
            <translation>pas de film</translation>
        </message>
        <message>
            <source>Has not played yet.</source>
            <translation>N’a pas encore joué.</translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n séance</numerusform>
                <numerusform>%n séances</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n coup</numerusform>
                <numerusform>%n coups</numerusform>
            </translation>
        </message>
        <message>
            <source>last played on %1</source>
            <translation>a joué pour la dernière fois le %1</translation>
        </message>
        <message>
            <source>The report goes to nobody but this person and, for a minor, a parent or guardian.</source>
            <translation>Le rapport n’est remis qu’à cette personne et, pour un mineur, à un parent ou tuteur.</translation>
        </message>
    </context>
    <context>
        <name>PlaceHelp</name>
        <message>
            <source>Go through the steps from the first; you can leave and come back at any time.</source>
            <translation>Suivez les étapes dans l’ordre ; vous pouvez partir et revenir à tout moment.</translation>
        </message>
        <message>
            <source>Measure the table with a steel rule, nose to nose; equal diagonals mean that it is square.</source>
            <translation>Mesurez la table avec une règle d’acier, de nez à nez ; des diagonales égales veulent dire qu’elle est d’équerre.</translation>
        </message>
        <message>
            <source>Print the board at its true size, check its ruler, and take at least ten sharp stills that reach every corner of the image.</source>
            <translation>Imprimez la mire à sa vraie taille, vérifiez sa règle, et prenez au moins dix photos nettes qui atteignent chaque coin de l’image.</translation>
        </message>
        <message>
            <source>Measure where the tags lie and how high they stand: one centimetre of height is worth millimetres at the balls.</source>
            <translation>Mesurez où se trouvent les repères et à quelle hauteur : un centimètre de hauteur vaut des millimètres aux billes.</translation>
        </message>
        <message>
            <source>Ask the self-check whether lens and rig fit the film, and the error map how far a ball may be off.</source>
            <translation>Demandez à l’autocontrôle si l’objectif et le calage vont avec le film, et à la carte d’erreur de combien une bille peut être à côté.</translation>
        </message>
        <message>
            <source>Begin with the game and who plays, or with practice alone.</source>
            <translation>Commencez par le jeu et les joueurs, ou par un entraînement seul.</translation>
        </message>
        <message>
            <source>Drag the balls to where they lie; they are drawn to spots, cushions and other balls.</source>
            <translation>Faites glisser les billes là où elles sont ; mouches, bandes et autres billes les attirent.</translation>
        </message>
        <message>
            <source>Click the ball and the pocket that are played for, then press the key of what happened.</source>
            <translation>Cliquez la bille et la poche visées, puis appuyez sur la touche de ce qui s’est passé.</translation>
        </message>
        <message>
            <source>The referee keeps turn and score; undo takes back any step.</source>
            <translation>L’arbitre tient le tour et le score ; Annuler reprend n’importe quelle étape.</translation>
        </message>
        <message>
            <source>Ask for a suggestion only when you want one: that it was shown is kept with the shot.</source>
            <translation>Ne demandez une suggestion que si vous en voulez une : le fait de l’avoir vue est gardé avec le coup.</translation>
        </message>
        <message>
            <source>Choose a shot on the left, or scrub along the time line.</source>
            <translation>Choisissez un coup à gauche, ou parcourez la ligne de temps.</translation>
        </message>
        <message>
            <source>Step by image, by event or by shot; film and plan always show the same moment.</source>
            <translation>Avancez par image, par événement ou par coup ; film et plan montrent toujours le même instant.</translation>
        </message>
        <message>
            <source>Suggested is dashed, taken is solid; the panel on the right sets both side by side.</source>
            <translation>Le coup suggéré est en tirets, le coup joué en trait plein ; le panneau de droite les met côte à côte.</translation>
        </message>
        <message>
            <source>Each number stands with its standard uncertainty; what the film cannot show is called not observable.</source>
            <translation>Chaque nombre est donné avec son incertitude type ; ce que le film ne peut montrer est dit non observable.</translation>
        </message>
        <message>
            <source>Filter the shots to play, say, all thick misses one after another.</source>
            <translation>Filtrez les coups pour passer, par exemple, tous les manqués trop pleins à la suite.</translation>
        </message>
        <message>
            <source>Choose a player and a period; a second column compares another period or player.</source>
            <translation>Choisissez un joueur et une période ; une seconde colonne compare une autre période ou un autre joueur.</translation>
        </message>
        <message>
            <source>Bands and whiskers are 95 % intervals; a change within them may be chance.</source>
            <translation>Les bandes et les moustaches sont des intervalles à 95 % ; un changement à l’intérieur peut être le hasard.</translation>
        </message>
        <message>
            <source>Click a point or a cell to look at the shots behind it.</source>
            <translation>Cliquez un point ou une case pour voir les coups qui sont derrière.</translation>
        </message>
        <message>
            <source>What to work on names three things at most, with what each is worth in frames.</source>
            <translation>« Sur quoi travailler » nomme trois choses au plus, avec ce que chacune vaut en parties.</translation>
        </message>
        <message>
            <source>Choose the student, the period and the student's own language.</source>
            <translation>Choisissez l’élève, la période et la langue de l’élève.</translation>
        </message>
        <message>
            <source>Write a note of your own: it stands on the first page.</source>
            <translation>Écrivez un mot de votre main : il figure en première page.</translation>
        </message>
        <message>
            <source>The sheets on the screen are the ones that print; export them as PDF or HTML.</source>
            <translation>Les feuilles à l’écran sont celles qui s’impriment ; exportez-les en PDF ou HTML.</translation>
        </message>
        <message>
            <source>Put right what was read wrongly with one key, or from the right button's menu; what follows is read and ruled again.</source>
            <translation>Rectifiez d’une touche, ou par le menu du bouton droit, ce qui a été mal lu ; ce qui en découle est relu et rejugé.</translation>
        </message>
        <message>
            <source>Choose a drill on the left; point at a ball to see how its place is measured.</source>
            <translation>Choisissez un exercice à gauche ; pointez une bille pour voir comment mesurer sa place.</translation>
        </message>
        <message>
            <source>Every drill has mirror images: what is easy to one side may be hard to the other.</source>
            <translation>Chaque exercice a ses images miroir : ce qui est facile d’un côté peut être difficile de l’autre.</translation>
        </message>
        <message>
            <source>Begin a run, click where the cue ball came to rest, and press the key of what happened.</source>
            <translation>Commencez une série, cliquez là où la blanche s’est arrêtée, et pressez la touche de ce qui s’est passé.</translation>
        </message>
        <message>
            <source>Or let the tries be counted from a session that was recorded.</source>
            <translation>Ou faites compter les essais d’une séance enregistrée.</translation>
        </message>
        <message>
            <source>The history says whether the last run differs from those before by more than chance.</source>
            <translation>L’historique dit si la dernière série diffère des précédentes par plus que le hasard.</translation>
        </message>
        <message>
            <source>Add the players first: name, playing hand, groups such as juniors or Tuesday.</source>
            <translation>Ajoutez d’abord les joueurs : nom, main de jeu, groupes tels que juniors ou mardi.</translation>
        </message>
        <message>
            <source>Note who consented to what, when and until when; for a minor a parent or guardian does.</source>
            <translation>Notez qui a consenti à quoi, quand et jusqu’à quand ; pour un mineur, c’est un parent ou tuteur.</translation>
        </message>
        <message>
            <source>What is missing or has expired is said in words, with what follows: without consent no film is kept.</source>
            <translation>Ce qui manque ou a expiré est dit en mots, avec ce qui s’ensuit : sans consentement, aucun film n’est gardé.</translation>
        </message>
        <message>
            <source>Nothing leaves the list of consents: withdrawal, renewal and mistakes are lines of their own.</source>
            <translation>Rien ne quitte la liste des consentements : retrait, renouvellement et erreur sont des lignes à part.</translation>
        </message>
        <message>
            <source>A guest's shots can be given to a player once it is known who it was.</source>
            <translation>Les coups d’un invité peuvent être attribués à un joueur dès qu’on sait qui c’était.</translation>
        </message>
        <message>
            <source>From a film or live, what the referee cannot see is asked on the right: press the number of the answer.</source>
            <translation>Depuis un film ou en direct, ce que l’arbitre ne peut voir est demandé à droite : tapez le numéro de la réponse.</translation>
        </message>
        <message>
            <source>A live session can keep its film beside the record, of people whose consent is noted in Players.</source>
            <translation>Une séance en direct peut garder son film à côté du carnet, pour les personnes dont le consentement est noté dans Joueurs.</translation>
        </message>
        <message>
            <source>Once Set-up has made a rig, the camera says how far each ball is from its place.</source>
            <translation>Une fois le calage fait dans Installation, la caméra dit l’écart de chaque bille à sa place.</translation>
        </message>
        <message>
            <source>Hold a shot to set another one beside it, with what differs below.</source>
            <translation>Gardez un coup pour en mettre un autre à côté ; dessous, ce qui diffère.</translation>
        </message>
        <message>
            <source>Save what you see as a picture, or the shot as a short film; a film of people is written only with their consent, the plan always.</source>
            <translation>Enregistrez ce que vous voyez en image, ou le coup en court film ; un film de personnes n’est écrit qu’avec leur accord, le plan toujours.</translation>
        </message>
        <message>
            <source>Without tags and board the cushions serve; the error map then says what they cost. A cushion that was missed or mistaken is placed by hand under a loupe, in the step Rig.</source>
            <translation>Sans repères ni mire, les bandes suffisent ; la carte d’erreur dit alors ce que cela coûte. Une bande manquée ou confondue se place à la main sous une loupe, à l’étape Calage.</translation>
        </message>
        <message>
            <source>Every edit can be undone, and brings back what it had made void, the rig included.</source>
            <translation>Chaque modification peut être annulée et rend ce qu’elle avait invalidé, calage compris.</translation>
        </message>
        <message>
            <source>The rig is checked against the film before it is measured, and every five minutes of live play; check the rig again at any moment by its key.</source>
            <translation>Le calage est vérifié sur le film avant la mesure, et toutes les cinq minutes en direct ; sa touche le revérifie à tout moment.</translation>
        </message>
        <message>
            <source>With a projector the suggestion, or where balls must be put back, lies on the cloth. A live session makes it black while somebody leans over the table.</source>
            <translation>Avec un projecteur, la suggestion ou la place des billes à remettre s’affiche sur le tapis. Une séance en direct le met au noir tant que quelqu’un se penche sur la table.</translation>
        </message>
        <message>
            <source>With a projector the set-up can lie on the cloth; never look into the beam.</source>
            <translation>Avec un projecteur, la position peut s’afficher sur le tapis ; ne regardez jamais dans le faisceau.</translation>
        </message>
    </context>
    <context>
        <name>Places</name>
        <message>
            <source>Set-up</source>
            <translation>Installation</translation>
        </message>
        <message>
            <source>Set up table, lens and rig, and see how far to trust them</source>
            <translation>Mettre en place table, objectif et calage, et voir jusqu’où s’y fier</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>Séance</translation>
        </message>
        <message>
            <source>Put in what is played, shot by shot</source>
            <translation>Saisir ce qui est joué, coup par coup</translation>
        </message>
        <message>
            <source>Review</source>
            <translation>Relecture</translation>
        </message>
        <message>
            <source>Look at measured shots, film and plan together</source>
            <translation>Revoir les coups mesurés, film et plan ensemble</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Progression</translation>
        </message>
        <message>
            <source>See how a player's aim, speed and makes hold up</source>
            <translation>Voir comment tiennent la visée, la vitesse et la réussite d’un joueur</translation>
        </message>
        <message>
            <source>Reports</source>
            <translation>Bilans</translation>
        </message>
        <message>
            <source>Make the progress report that a student takes home</source>
            <translation>Faire le bilan de progression que l’élève emporte chez lui</translation>
        </message>
        <message>
            <source>Drills</source>
            <translation>Exercices</translation>
        </message>
        <message>
            <source>Set up a drill, repeat it, and see the scatter shrink</source>
            <translation>Poser un exercice, le répéter, et voir la dispersion se réduire</translation>
        </message>
        <message>
            <source>Players</source>
            <translation>Joueurs</translation>
        </message>
        <message>
            <source>Who plays: groups, consent, notes, and what is kept of each</source>
            <translation>Qui joue : groupes, consentement, notes, et ce qui est gardé de chacun</translation>
        </message>
    </context>
    <context>
        <name>PlanSentence</name>
        <message>
            <source>leaves the opponent an open pot %1 times in 10</source>
            <translation>laisse à l’adversaire une bille jouable %1 fois sur 10</translation>
        </message>
        <message>
            <source>pot %1</source>
            <translation>réussite %1</translation>
        </message>
        <message>
            <source>pot %1 against %2</source>
            <translation>réussite %1 contre %2</translation>
        </message>
        <message>
            <source>the leave gives %1 a shot %2 times in 10</source>
            <translation>le placement rend %1 jouable %2 fois sur 10</translation>
        </message>
        <message>
            <source>foul %1</source>
            <translation>faute %1</translation>
        </message>
        <message>
            <source>as good as %1</source>
            <translation>vaut autant que %1</translation>
        </message>
        <message>
            <source>better than %1</source>
            <translation>vaut mieux que %1</translation>
        </message>
        <message>
            <source>behind %1</source>
            <translation>vaut moins que %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>la %1 vers %2</translation>
        </message>
        <message>
            <source>%1 into %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>combinaison %1-%2 vers %3</translation>
        </message>
        <message>
            <source>off %1 onto %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>carambole %1-%2 vers %3</translation>
        </message>
        <message>
            <source>bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>la %1 par la bande vers %2</translation>
        </message>
        <message>
            <source>two-cushion bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>la %1 par deux bandes vers %2</translation>
        </message>
        <message>
            <source>kick at %1</source>
            <comment>a ball</comment>
            <translation>bricole sur la %1</translation>
        </message>
        <message>
            <source>two-cushion kick at %1</source>
            <comment>a ball</comment>
            <translation>bricole par deux bandes sur la %1</translation>
        </message>
        <message>
            <source>safety off %1</source>
            <comment>a ball</comment>
            <translation>défense sur la %1</translation>
        </message>
        <message>
            <source>break</source>
            <translation>casse</translation>
        </message>
        <message>
            <source>%1 was the right shot.</source>
            <translation>%1 : c’était le bon coup.</translation>
        </message>
        <message>
            <source>%1 was the right ball, but another speed or spin was better: %2.</source>
            <translation>%1 : c’était la bonne bille, mais une autre vitesse ou un autre effet valait mieux : %2.</translation>
        </message>
        <message>
            <source>%1 is as good as %2: %3.</source>
            <translation>%1 vaut autant que %2 : %3.</translation>
        </message>
        <message>
            <source>%1 was better than %2.</source>
            <translation>%1 valait mieux que %2.</translation>
        </message>
        <message>
            <source>%1 was better than %2: %3.</source>
            <translation>%1 valait mieux que %2 : %3.</translation>
        </message>
    </context>
    <context>
        <name>PlayCharts</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>value, least, most</comment>
            <translation>%1 (%2 à %3)</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 sur %2</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>casse : une bille et pas de faute</translation>
        </message>
        <message>
            <source>break: fouls</source>
            <translation>casse : fautes</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>casse : billes</translation>
        </message>
        <message>
            <source>break: cue ball from the middle</source>
            <translation>casse : distance de la blanche au centre</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>billes par reprise</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>parties gagnées en une reprise</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>fautes, sur tous les coups</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>billes faciles manquées, sur les faciles</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>temps par coup</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>Le jeu</translation>
        </message>
        <message>
            <source>With the number counted; lines and brackets: 95 % interval.</source>
            <translation>Avec le nombre compté ; traits et parenthèses : intervalle à 95 %.</translation>
        </message>
        <message>
            <source>left no direct shot</source>
            <translation>sans coup direct laissé</translation>
        </message>
        <message>
            <source>next player: made a ball</source>
            <translation>joueur suivant : bille réussie</translation>
        </message>
        <message>
            <source>next player: missed</source>
            <translation>joueur suivant : manqué</translation>
        </message>
        <message>
            <source>next player: safety</source>
            <translation>joueur suivant : défense</translation>
        </message>
        <message>
            <source>next player: foul</source>
            <translation>joueur suivant : faute</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>Défenses et ce qui a suivi</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>du mauvais côté de la bille suivante</translation>
        </message>
        <message>
            <source>cost on the right side</source>
            <translation>coût du bon côté</translation>
        </message>
        <message>
            <source>cost on the wrong side</source>
            <translation>coût du mauvais côté</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>plus long (+) ou plus court que voulu</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>Placement pour la bille suivante</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan that was taken. Cost: of the frame's chance. Lines and brackets: 95 % interval.</source>
            <translation>Billes réussies, face au plan joué. Coût : sur la chance de gagner la partie. Traits et parenthèses : intervalle à 95 %.</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Choix et exécution</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>bien exécuté</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>mal exécuté</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>bon choix</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>mauvais choix</translation>
        </message>
        <message>
            <source>Shots in each box and the 95 % interval of their share. Ties count as good; shots after a suggestion was shown are left out.</source>
            <translation>Coups dans chaque case et intervalle à 95 % de leur part. Les égalités comptent comme bonnes ; les coups après une suggestion montrée sont laissés de côté.</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>Chances annoncées et chances réalisées</translation>
        </message>
        <message>
            <source>stated %1, fell %2 (%3), %4</source>
            <comment>chance, share, interval, number of shots</comment>
            <translation>annoncé %1, réussi %2 (%3), %4</translation>
        </message>
        <message>
            <source>Across: the chance that the plan was given, up: the share that fell, with its 95 % interval. On the dashed line both agree. Hollow: fewer than 10.</source>
            <translation>En abscisse : la chance annoncée, en ordonnée : la part réussie avec son intervalle à 95 %. Sur la ligne en tirets, les deux concordent. Symboles creux : moins de 10.</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>reprises par partie</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>temps avant une bille rentrée</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>temps avant un coup manqué</translation>
        </message>
        <message>
            <source>No direct shot: the planner found none for the next player. Lines: 95 % interval.</source>
            <translation>Aucun coup direct : la recherche n’en a trouvé aucun pour le joueur suivant. Traits : intervalle à 95 %.</translation>
        </message>
    </context>
    <context>
        <name>PrintSheets</name>
        <message>
            <source>Calibration board %1</source>
            <translation>Mire d’étalonnage %1</translation>
        </message>
        <message>
            <source>Tags for the rails</source>
            <translation>Repères pour le cadre de la table</translation>
        </message>
        <message>
            <source>Tag %1: black side %2 mm; cut along the dashes, top is up</source>
            <translation>Repère %1 : côté noir %2 mm ; coupez le long des tirets, le haut est en haut</translation>
        </message>
        <message>
            <source>Print at 100 %, not fitted to the page. Both lines must measure 100 mm with a steel rule; if not, tell the program what they measure.</source>
            <translation>Imprimez à 100 %, sans ajuster à la page. Les deux lignes doivent mesurer 100 mm à la règle métallique ; sinon, indiquez au programme ce qu’elles mesurent.</translation>
        </message>
    </context>
    <context>
        <name>ProgressWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>du %1 au %2</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>depuis le %1</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>entraînement</translation>
        </message>
        <message>
            <source>matches</source>
            <translation>matchs</translation>
        </message>
        <message>
            <source>lessons</source>
            <translation>cours</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>Il n’y a pas encore de quoi dire sur quoi travailler d’abord ; chaque séance de plus aide.</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>Exercice : %1</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>Ce point et le suivant se valent à peu près ; commencez par l’un ou par l’autre.</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection.</source>
            <translation>Il n’y a aucun coup de ce joueur dans cette sélection.</translation>
        </message>
        <message>
            <source>pots tried: %1</source>
            <translation>tentatives : %1</translation>
        </message>
        <message>
            <source>Not tracked: %1. Changed by a person: %2. Waiting for a person: %3.</source>
            <translation>Non suivis : %1. Modifiés à la main : %2. En attente d’une personne : %3.</translation>
        </message>
        <message>
            <source>Pocket named by a person: %1 of %2; never mixed with pockets read from the balls.</source>
            <translation>Poches indiquées par une personne : %1 sur %2 ; jamais mélangées à celles déduites des billes.</translation>
        </message>
        <message>
            <source>Left out, since its pockets differ: %1 (mouth %2 mm, %3).</source>
            <translation>Laissé de côté, car ses poches diffèrent : %1 (ouverture %2 mm, %3).</translation>
        </message>
        <message>
            <source>Dated in the future: %1. Check the clock.</source>
            <translation>Daté dans le futur : %1. Vérifiez l’horloge.</translation>
        </message>
    </context>
    <context>
        <name>ReportBuilder</name>
        <message>
            <source>Progress report: %1</source>
            <translation>Bilan de progression : %1</translation>
        </message>
        <message>
            <source>%1 · made with Ferrule on %2</source>
            <translation>%1 · fait avec Ferrule le %2</translation>
        </message>
        <message>
            <source>Pots</source>
            <translation>Empochage</translation>
        </message>
        <message>
            <source>Pots whose pocket was named by a person. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>Tentatives dont la poche a été indiquée par une personne. Chaque case montre combien des billes tentées sont rentrées, entre quelles parts se situe la vraie, et combien ont été tentées.</translation>
        </message>
        <message>
            <source>Made by cut and distance: %1.</source>
            <translation>Réussite par coupe et distance : %1.</translation>
        </message>
        <message>
            <source>All pots</source>
            <translation>Toutes tentatives</translation>
        </message>
        <message>
            <source>made</source>
            <translation>réussies</translation>
        </message>
        <message>
            <source>95 % interval</source>
            <translation>intervalle à 95 %</translation>
        </message>
        <message>
            <source>tried</source>
            <translation>tentées</translation>
        </message>
        <message>
            <source>pocket read from the balls</source>
            <translation>poche déduite des billes</translation>
        </message>
        <message>
            <source>pocket named by a person</source>
            <translation>poche indiquée par une personne</translation>
        </message>
        <message>
            <source>Aim and speed</source>
            <translation>Visée et vitesse</translation>
        </message>
        <message>
            <source>How far the strokes scatter, session by session: lower is steadier. The aim is worked out from the line on which the object ball ran, so near and far shots compare.</source>
            <translation>De combien les coups se dispersent, séance par séance : plus bas, c’est plus régulier. La visée est calculée d’après la ligne suivie par la bille visée, pour que coups courts et longs se comparent.</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>Dispersion de la visée</translation>
        </message>
        <message>
            <source>Scatter of the aim: not enough sessions with %1 or more to draw.</source>
            <translation>Dispersion de la visée : pas assez de séances d’au moins %1 pour un tracé.</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>Dispersion de la vitesse sur positions répétées</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>Dispersion de la vitesse</translation>
        </message>
        <message>
            <source>Scatter of the speed: not enough sessions with %1 or more to draw.</source>
            <translation>Dispersion de la vitesse : pas assez de séances d’au moins %1 pour un tracé.</translation>
        </message>
        <message>
            <source>Scatter of the speed: %1.</source>
            <translation>Dispersion de la vitesse : %1.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <translation>Geste</translation>
        </message>
        <message>
            <source>value</source>
            <translation>valeur</translation>
        </message>
        <message>
            <source>shots</source>
            <translation>coups</translation>
        </message>
        <message>
            <source>aim: scatter</source>
            <translation>visée : dispersion</translation>
        </message>
        <message>
            <source>aim: mean, + to the left</source>
            <translation>visée : moyenne, + vers la gauche</translation>
        </message>
        <message>
            <source>speed: scatter</source>
            <translation>vitesse : dispersion</translation>
        </message>
        <message>
            <source>speed: mean error</source>
            <translation>vitesse : erreur moyenne</translation>
        </message>
        <message>
            <source>tip point, side: scatter</source>
            <translation>point d’attaque, côté : dispersion</translation>
        </message>
        <message>
            <source>tip point, height: scatter</source>
            <translation>point d’attaque, hauteur : dispersion</translation>
        </message>
        <message>
            <source>rest of the cue ball: scatter each way</source>
            <translation>arrêt de la blanche : dispersion dans chaque sens</translation>
        </message>
        <message>
            <source>Nobody wrote down what was meant, so speed, tip point and rest are compared with the player's own mean in set-ups that were repeated: this shows how well a stroke is repeated, not whether it was right.</source>
            <translation>Personne n’a noté ce qui était voulu ; la vitesse, le point d’attaque et l’arrêt sont donc comparés à la moyenne du joueur lui-même sur des positions répétées : cela montre si un geste se répète bien, pas s’il était juste.</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>Le jeu</translation>
        </message>
        <message>
            <source>Measure</source>
            <translation>Mesure</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>casse : une bille et pas de faute</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>casse : billes</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>billes par reprise</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>parties gagnées en une reprise</translation>
        </message>
        <message>
            <source>safeties that left no direct shot</source>
            <translation>défenses ne laissant aucun coup direct</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>fautes, sur tous les coups</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>billes faciles manquées, sur les faciles</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>temps par coup</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>temps avant une bille empochée</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>temps avant un coup manqué</translation>
        </message>
        <message>
            <source>An easy pot is one that this player makes at least four times in five. Hard shots take longer and are missed more often, so more time before a miss is no fault by itself. Innings depend on the opponent and the rack.</source>
            <translation>Une bille est facile quand ce joueur la rentre au moins quatre fois sur cinq. Les coups difficiles prennent plus de temps et sont plus souvent manqués ; plus de temps avant un coup manqué n’est donc pas un défaut en soi. Les reprises dépendent de l’adversaire et de la position après la casse.</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>Choix et exécution</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: no suggestions are recorded for these shots.</source>
            <translation>On ne peut pas dire si le bon coup a été choisi : aucune suggestion n’est enregistrée pour ces coups.</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: %1.</source>
            <translation>On ne peut pas dire si le bon coup a été choisi : %1.</translation>
        </message>
        <message>
            <source>by the choice</source>
            <translation>par le choix</translation>
        </message>
        <message>
            <source>by the delivery</source>
            <translation>par l’exécution</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>bien exécuté</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>mal exécuté</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>bon choix</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>mauvais choix</translation>
        </message>
        <message>
            <source>Options that are too close to tell apart count as good. A shot is never wrong merely for differing from the suggestion.</source>
            <translation>Des options trop proches pour être départagées comptent comme bonnes. Un coup n’est jamais faux du seul fait qu’il diffère de la suggestion.</translation>
        </message>
        <message>
            <source>%1, %2, shot %3 to %4</source>
            <translation>%1, %2, coup %3, poche %4</translation>
        </message>
        <message>
            <source>Worth looking at again</source>
            <translation>À revoir</translation>
        </message>
        <message>
            <source>The best: %1. This player makes such a ball about %2 of the time.</source>
            <translation>Le meilleur : %1. Ce joueur rentre une telle bille dans environ %2 des cas.</translation>
        </message>
        <message>
            <source>The most instructive: %1. Missed, though such a ball goes in about %2 of the time.</source>
            <translation>Le plus instructif : %1. Manqué, alors qu’une telle bille rentre dans environ %2 des cas.</translation>
        </message>
        <message>
            <source>How the numbers were made</source>
            <translation>Comment les chiffres sont obtenus</translation>
        </message>
        <message>
            <source>Intervals hold the true value 95 times in 100. They come from drawing whole sessions again, since shots of one day are alike; shares of single cells are Wilson intervals.</source>
            <translation>Les intervalles contiennent la vraie valeur 95 fois sur 100. Ils viennent de nouveaux tirages de séances entières, car les coups d’un même jour se ressemblent ; les parts des cases isolées sont des intervalles de Wilson.</translation>
        </message>
        <message>
            <source>All findings of this report together raise a false alarm in at most 5 of 100 reports about players of whom none is true.</source>
            <translation>Tous les constats de ce bilan réunis donnent une fausse alerte dans 5 bilans sur 100 au plus, pour des joueurs chez qui aucun n’est vrai.</translation>
        </message>
        <message>
            <source>Harder shots are allowed for: what went in is compared with what this player makes of shots with the same cut, distances and pocket.</source>
            <translation>La difficulté des coups est prise en compte : ce qui est rentré est comparé à ce que ce joueur réussit avec la même coupe, les mêmes distances et la même poche.</translation>
        </message>
        <message>
            <source>Tables whose pockets differ in width are never put together, and players are not ranked.</source>
            <translation>Les tables dont les poches n’ont pas la même largeur ne sont jamais réunies, et les joueurs ne sont pas classés.</translation>
        </message>
        <message>
            <source>Position</source>
            <translation>Placement</translation>
        </message>
        <message>
            <source>On which side of the next ball the cue ball was left: %1.</source>
            <translation>De quel côté de la bille suivante la blanche est restée : %1.</translation>
        </message>
        <message>
            <source>The drill with most tries: %1</source>
            <translation>L’exercice le plus travaillé : %1</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>Essais qui ont atteint chaque but</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>reprises par partie</translation>
        </message>
        <message>
            <source>Pots whose pocket was read from the paths of the balls; a lucky ball may count as meant. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>Tentatives dont la poche a été déduite du trajet des billes ; un raccroc peut compter comme voulu. Chaque case montre combien des billes tentées sont rentrées, entre quelles parts se situe la vraie, et combien ont été tentées.</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>Réussite, par coupe et distance de la blanche</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>Réussite, par coupe et distance à la poche</translation>
        </message>
        <message>
            <source>On which side the misses lie: too few missed cuts to say.</source>
            <translation>De quel côté sont les erreurs : trop peu de coupes manquées pour conclure.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>least, most</comment>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>Two strokes in three lie within the scatter on either side of the mean. R: the ball's radius.</source>
            <translation>Deux coups sur trois se situent dans la dispersion, de part et d’autre de la moyenne. R : rayon de la bille.</translation>
        </message>
        <message>
            <source>break: distance of the cue ball from the middle</source>
            <translation>casse : distance de la blanche au centre</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan</source>
            <translation>Billes réussies, face au plan joué</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>du mauvais côté de la bille suivante</translation>
        </message>
        <message>
            <source>cost on the right side, of the frame's chance</source>
            <translation>coût du bon côté, sur la chance de gagner</translation>
        </message>
        <message>
            <source>cost on the wrong side, of the frame's chance</source>
            <translation>coût du mauvais côté, sur la chance de gagner</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>plus long (+) ou plus court que voulu</translation>
        </message>
        <message>
            <source>Cost of a shot, of the chance to win the frame</source>
            <translation>Coût d’un coup, sur la chance de gagner la partie</translation>
        </message>
        <message>
            <source>cuts to the left: mean, + thin, − thick</source>
            <translation>coupes à gauche : moyenne, + fine, − pleine</translation>
        </message>
        <message>
            <source>cuts to the right: mean, + thin, − thick</source>
            <translation>coupes à droite : moyenne, + fine, − pleine</translation>
        </message>
    </context>
    <context>
        <name>ReportWords</name>
        <message>
            <source>d MMMM yyyy</source>
            <translation>d MMMM yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d MMM</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln coup</numerusform>
                <numerusform>%Ln coups</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln session(s)</source>
            <translation>
                <numerusform>%Ln séance</numerusform>
                <numerusform>%Ln séances</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 shots</source>
            <translation>pas encore assez : %1 coups sur %2</translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 sessions</source>
            <translation>pas encore assez : %1 séances sur %2</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant</source>
            <translation>personne n’a noté ce qui était voulu</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant, and no set-up was repeated</source>
            <translation>personne n’a noté ce qui était voulu, et aucune position n’a été répétée</translation>
        </message>
        <message>
            <source>the films have no clock</source>
            <translation>les films n’ont pas d’horloge</translation>
        </message>
        <message>
            <source>not recorded yet</source>
            <translation>pas encore enregistré</translation>
        </message>
        <message>
            <source>the aim over the weeks</source>
            <translation>la visée au fil des semaines</translation>
        </message>
        <message>
            <source>the control of speed over the weeks</source>
            <translation>le dosage de la vitesse au fil des semaines</translation>
        </message>
        <message>
            <source>the balls potted over the weeks</source>
            <translation>les billes empochées au fil des semaines</translation>
        </message>
        <message>
            <source>the aim after 40 minutes</source>
            <translation>la visée après 40 minutes</translation>
        </message>
        <message>
            <source>the balls potted after 40 minutes</source>
            <translation>les billes empochées après 40 minutes</translation>
        </message>
        <message>
            <source>the balls potted in matches</source>
            <translation>les billes empochées en match</translation>
        </message>
        <message>
            <source>a pull to the left or right</source>
            <translation>une dérive vers la gauche ou la droite</translation>
        </message>
        <message>
            <source>thick or thin cuts to the left</source>
            <translation>des coupes vers la gauche trop pleines ou trop fines</translation>
        </message>
        <message>
            <source>thick or thin cuts to the right</source>
            <translation>des coupes vers la droite trop pleines ou trop fines</translation>
        </message>
        <message>
            <source>The aim got steadier: from about %1 off to about %2 off.</source>
            <translation>La visée est devenue plus régulière : d’environ %1 d’écart à environ %2.</translation>
        </message>
        <message>
            <source>The aim got less steady: from about %1 off to about %2 off.</source>
            <translation>La visée est devenue moins régulière : d’environ %1 d’écart à environ %2.</translation>
        </message>
        <message>
            <source>The speed of the stroke got steadier: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>La vitesse des coups est devenue plus régulière : elle variait d’environ %1 au début et d’environ %2 à la fin.</translation>
        </message>
        <message>
            <source>The speed of the stroke got less steady: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>La vitesse des coups est devenue moins régulière : elle variait d’environ %1 au début et d’environ %2 à la fin.</translation>
        </message>
        <message>
            <source>Fewer balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>Moins de billes sont rentrées : sur 100 tentées, environ %1 au début et %2 à la fin, difficulté prise en compte.</translation>
        </message>
        <message>
            <source>More balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>Plus de billes sont rentrées : sur 100 tentées, environ %1 au début et %2 à la fin, difficulté prise en compte.</translation>
        </message>
        <message>
            <source>The aim is better late in a session: about %1 off before 40 minutes and %2 after.</source>
            <translation>La visée est meilleure en fin de séance : environ %1 d’écart avant 40 minutes et %2 après.</translation>
        </message>
        <message>
            <source>The aim gets worse when a session grows long: about %1 off before 40 minutes and %2 after. A break may help.</source>
            <translation>La visée se dégrade quand la séance s’allonge : environ %1 d’écart avant 40 minutes et %2 après. Une pause peut aider.</translation>
        </message>
        <message>
            <source>Fewer balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>Moins de billes rentrent en fin de séance : sur 100 de même difficulté, environ %1 avant 40 minutes et %2 après.</translation>
        </message>
        <message>
            <source>More balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>Plus de billes rentrent en fin de séance : sur 100 de même difficulté, environ %1 avant 40 minutes et %2 après.</translation>
        </message>
        <message>
            <source>Fewer balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>Moins de billes rentrent en match : sur 100 de même difficulté, environ %1 à l’entraînement et %2 en match.</translation>
        </message>
        <message>
            <source>More balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>Plus de billes rentrent en match : sur 100 de même difficulté, environ %1 à l’entraînement et %2 en match.</translation>
        </message>
        <message>
            <source>The aim is pulled to the right by %1 on average, whichever way the ball has to go.</source>
            <translation>La visée dérive vers la droite de %1 en moyenne, où que la bille doive aller.</translation>
        </message>
        <message>
            <source>The aim is pulled to the left by %1 on average, whichever way the ball has to go.</source>
            <translation>La visée dérive vers la gauche de %1 en moyenne, où que la bille doive aller.</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>Les billes qui doivent aller à gauche sont prises trop pleines : la visée a %1 d’écart en moyenne.</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too thin: the aim is off by %1 on average.</source>
            <translation>Les billes qui doivent aller à gauche sont prises trop fines : la visée a %1 d’écart en moyenne.</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>Les billes qui doivent aller à droite sont prises trop pleines : la visée a %1 d’écart en moyenne.</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too thin: the aim is off by %1 on average.</source>
            <translation>Les billes qui doivent aller à droite sont prises trop fines : la visée a %1 d’écart en moyenne.</translation>
        </message>
        <message>
            <source>Centre-line there and back</source>
            <translation>Aller et retour sur la ligne médiane</translation>
        </message>
        <message>
            <source>Cut fan, left half</source>
            <translation>Éventail de coupes, moitié gauche</translation>
        </message>
        <message>
            <source>Cut fan, right half</source>
            <translation>Éventail de coupes, moitié droite</translation>
        </message>
        <message>
            <source>Cut fan as the last drill of the day</source>
            <translation>Éventail de coupes en dernier exercice du jour</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>Échelle d’arrêts en ligne</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>Coupe fine</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>Tirage vers la bande de tête</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>Rétros en ligne par zones</translation>
        </message>
        <message>
            <source>Send the cue ball alone from the head spot over the middle of the foot cushion and back; it should return over its start.</source>
            <translation>Jouez la blanche seule depuis la mouche de tête, par le milieu de la bande de pied, et retour ; elle doit repasser sur son point de départ.</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the left.</source>
            <translation>Bille visée sur la ligne médiane, à un quart de table de la bande de pied ; blanche à une demi-largeur de table ; coupes de 15, 30, 45 et 60 degrés vers la gauche.</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the right.</source>
            <translation>Bille visée sur la ligne médiane, à un quart de table de la bande de pied ; blanche à une demi-largeur de table ; coupes de 15, 30, 45 et 60 degrés vers la droite.</translation>
        </message>
        <message>
            <source>Cuts of 15, 30, 45 and 60 degrees to both sides, played after 40 minutes of practice: rest for five minutes first, and keep the routine.</source>
            <translation>Coupes de 15, 30, 45 et 60 degrés des deux côtés, jouées après 40 minutes d’entraînement : reposez-vous d’abord cinq minutes, et gardez votre routine.</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer; the cue ball stops dead at the contact.</source>
            <translation>Billes en ligne à quatre distances, chacune un peu plus longue ; la blanche s’arrête net au contact.</translation>
        </message>
        <message>
            <source>Object ball a quarter of the table from the foot cushion and near the side; cut of 65 degrees into the corner.</source>
            <translation>Bille visée à un quart de table de la bande de pied et près de la grande bande ; coupe de 65 degrés dans le coin.</translation>
        </message>
        <message>
            <source>Object ball on the foot spot, cue ball behind the head string: cuts of 33, 47 and 60 degrees into the corner.</source>
            <translation>Bille visée sur la mouche de pied, blanche derrière la ligne de tête : coupes de 33, 47 et 60 degrés dans le coin.</translation>
        </message>
        <message>
            <source>Send the cue ball alone from behind the head string to the foot cushion and back; it should stop as near to the head cushion as it can.</source>
            <translation>Jouez la blanche seule de derrière la ligne de tête jusqu’à la bande de pied et retour ; elle doit s’arrêter le plus près possible de la bande de tête.</translation>
        </message>
        <message>
            <source>Straight pots of a metre; the cue ball comes back by nothing, one, two and three hands' breadths, called before each stroke.</source>
            <translation>Billes en ligne à un mètre ; la blanche revient de rien, d’une, de deux et de trois largeurs de main, annoncées avant chaque coup.</translation>
        </message>
        <message>
            <source>The pull of the aim to one side</source>
            <translation>La dérive de la visée d’un côté</translation>
        </message>
        <message>
            <source>Cuts to the left</source>
            <translation>Coupes vers la gauche</translation>
        </message>
        <message>
            <source>Cuts to the right</source>
            <translation>Coupes vers la droite</translation>
        </message>
        <message>
            <source>The end of long sessions</source>
            <translation>La fin des longues séances</translation>
        </message>
        <message>
            <source>Long shots</source>
            <translation>Coups longs</translation>
        </message>
        <message>
            <source>Thin cuts</source>
            <translation>Coupes fines</translation>
        </message>
        <message>
            <source>Short and medium shots</source>
            <translation>Coups courts et moyens</translation>
        </message>
        <message>
            <source>Control of the speed</source>
            <translation>Dosage de la vitesse</translation>
        </message>
        <message>
            <source>Where the tip meets the ball</source>
            <translation>Où le procédé touche la bille</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the speed.</source>
            <translation>%1 coups ont été rejoués dans le simulateur avec un cinquième de dispersion de la vitesse en moins.</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the tip.</source>
            <translation>%1 coups ont été rejoués dans le simulateur avec un cinquième de dispersion du point d’attaque en moins.</translation>
        </message>
        <message>
            <source>%1 such pots were tried and %2 made.</source>
            <translation>Tentatives de ce genre : %1, dont %2 réussies.</translation>
        </message>
        <message>
            <source>Test again on %1.</source>
            <translation>Nouveau test le %1.</translation>
        </message>
        <message>
            <source>Target: speeds that scatter by %1 or less.</source>
            <translation>Cible : des vitesses qui se dispersent de %1 au plus.</translation>
        </message>
        <message>
            <source>Target: a tip that scatters by %1 of the ball's radius or less.</source>
            <translation>Cible : un point d’attaque qui se disperse de %1 du rayon de la bille au plus.</translation>
        </message>
        <message>
            <source>Target: %1 of %2.</source>
            <translation>Cible : %1 sur %2.</translation>
        </message>
        <message>
            <source>Were these a fifth steadier, about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>Si ceux-ci étaient d’un cinquième plus réguliers, environ %1 billes de plus sur 100 tentées rentreraient (très probablement %2).</translation>
        </message>
        <message>
            <source>Without this habit about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>Sans cette habitude, environ %1 billes de plus sur 100 tentées rentreraient (très probablement %2).</translation>
        </message>
        <message>
            <source>That is worth about %1 frames of every 100 (very probably %2).</source>
            <translation>Cela vaut environ %1 parties sur 100 (très probablement %2).</translation>
        </message>
        <message>
            <source>%1 or more of %2 would prove by themselves that it was no luck.</source>
            <translation>%1 ou plus sur %2 prouveraient à elles seules que ce n’est pas de la chance.</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>Longues coupes depuis la mouche de pied</translation>
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
            <translation>image %1 sur %2</translation>
        </message>
    </context>
    <context>
        <name>RulingSentence</name>
        <message>
            <source>Foul: %1.</source>
            <translation>Faute : %1.</translation>
        </message>
        <message>
            <source> and </source>
            <comment>last of a list</comment>
            <translation> et </translation>
        </message>
        <message>
            <source>A push-out.</source>
            <translation>Un push-out.</translation>
        </message>
        <message>
            <source>The break was too weak, which is no foul.</source>
            <translation>La casse était trop faible, ce qui n’est pas une faute.</translation>
        </message>
        <message>
            <source>%1 has %2.</source>
            <translation>%1 joue %2.</translation>
        </message>
        <message>
            <source>%1 is spotted.</source>
            <translation>%1 est remise sur la mouche.</translation>
        </message>
        <message>
            <source>%1 is put back.</source>
            <translation>%1 est remise à sa place.</translation>
        </message>
        <message>
            <source>All balls are racked.</source>
            <translation>Toutes les billes sont replacées.</translation>
        </message>
        <message>
            <source>14 balls are racked without the apex.</source>
            <translation>14 billes sont replacées dans le triangle, sans celle de pointe.</translation>
        </message>
        <message>
            <source>%1 is at the table, %2.</source>
            <translation>%1 est à la table, %2.</translation>
        </message>
        <message>
            <source>%1 plays on.</source>
            <translation>%1 continue.</translation>
        </message>
        <message>
            <source>%1 is at the table.</source>
            <translation>%1 est à la table.</translation>
        </message>
        <message>
            <source>%1 may choose: %2.</source>
            <translation>%1 peut choisir : %2.</translation>
        </message>
        <message>
            <source> or </source>
            <comment>last of a list</comment>
            <translation> ou </translation>
        </message>
        <message>
            <source>%1: %2, now %3.</source>
            <comment>player, points of the shot, points in all</comment>
            <translation>%1 : %2, total %3.</translation>
        </message>
        <message>
            <source>%1 wins the frame: %2.</source>
            <translation>%1 gagne la partie : %2.</translation>
        </message>
        <message>
            <source>Overruled by %1.</source>
            <translation>Décision modifiée par %1.</translation>
        </message>
    </context>
    <context>
        <name>RulingWords</name>
        <message>
            <source>a ball</source>
            <translation>une bille</translation>
        </message>
        <message>
            <source>another ball</source>
            <translation>une autre bille</translation>
        </message>
        <message>
            <source>Which ball was met first, %1 or %2?</source>
            <translation>Quelle bille a été touchée en premier, %1 ou %2 ?</translation>
        </message>
        <message>
            <source>Did %1 touch a cushion?</source>
            <translation>Pendant le coup, %1 a-t-elle touché une bande ?</translation>
        </message>
        <message>
            <source>Did %1 fall?</source>
            <translation>Finalement, %1 est-elle tombée ?</translation>
        </message>
        <message>
            <source>Where did %1 end: on the table, in a pocket or off the table?</source>
            <translation>Où a fini %1 : sur la table, dans une poche ou hors de la table ?</translation>
        </message>
        <message>
            <source>Did %1 leave the table and touch anything before it came back?</source>
            <translation>Avant de revenir, %1 a-t-elle quitté la table et touché quelque chose ?</translation>
        </message>
        <message>
            <source>Did somebody touch %1?</source>
            <translation>Quelqu’un a-t-il touché %1 ?</translation>
        </message>
        <message>
            <source>Was the cue ball struck twice? It lay very close to %1.</source>
            <translation>La blanche a-t-elle été frappée deux fois ? Tout près d’elle se trouvait %1.</translation>
        </message>
        <message>
            <source>Was %1 declared frozen to the cushion?</source>
            <translation>A-t-on annoncé %1 collée à la bande ?</translation>
        </message>
        <message>
            <source>Which was which, %1 and %2?</source>
            <translation>Laquelle était laquelle : %1 et %2 ?</translation>
        </message>
        <message>
            <source>Did %1 lie behind the head string?</source>
            <translation>Avant le coup, %1 était-elle derrière la ligne de tête ?</translation>
        </message>
        <message>
            <source>Was %1 called in that pocket?</source>
            <translation>A-t-on annoncé %1 dans cette poche ?</translation>
        </message>
        <message>
            <source>the first player</source>
            <translation>le premier joueur</translation>
        </message>
        <message>
            <source>the second player</source>
            <translation>le second joueur</translation>
        </message>
        <message>
            <source>the cue ball fell or left the table</source>
            <translation>la blanche est tombée ou a quitté la table</translation>
        </message>
        <message>
            <source>%1 was met first</source>
            <translation>%1 a été touchée en premier</translation>
        </message>
        <message>
            <source>a wrong ball</source>
            <translation>une mauvaise bille</translation>
        </message>
        <message>
            <source>no ball was met</source>
            <translation>aucune bille n’a été touchée</translation>
        </message>
        <message>
            <source>nothing fell and no ball met a cushion after the contact</source>
            <translation>rien n’est tombé et aucune bille n’a touché de bande après le contact</translation>
        </message>
        <message>
            <source>no foot was on the floor</source>
            <translation>aucun pied n’était au sol</translation>
        </message>
        <message>
            <source>%1 left the table</source>
            <translation>%1 a quitté la table</translation>
        </message>
        <message>
            <source>%1 was touched</source>
            <translation>%1 a été touchée</translation>
        </message>
        <message>
            <source>the cue ball was struck twice</source>
            <translation>la blanche a été frappée deux fois</translation>
        </message>
        <message>
            <source>the cue ball was pushed</source>
            <translation>la blanche a été poussée</translation>
        </message>
        <message>
            <source>balls were still moving</source>
            <translation>des billes bougeaient encore</translation>
        </message>
        <message>
            <source>the cue ball was not placed behind the head string</source>
            <translation>la blanche n’était pas placée derrière la ligne de tête</translation>
        </message>
        <message>
            <source>the cue ball did not cross the head string before it met %1</source>
            <translation>la blanche n’a pas franchi la ligne de tête avant de toucher %1</translation>
        </message>
        <message>
            <source>the cue was laid on the table to aim</source>
            <translation>la queue a été posée sur la table pour viser</translation>
        </message>
        <message>
            <source>it was the other's turn</source>
            <translation>c’était le tour de l’autre joueur</translation>
        </message>
        <message>
            <source>the time was over</source>
            <translation>le temps était écoulé</translation>
        </message>
        <message>
            <source>the rack template was in the way</source>
            <translation>le gabarit de placement gênait</translation>
        </message>
        <message>
            <source>unsportsmanlike conduct</source>
            <translation>conduite antisportive</translation>
        </message>
        <message>
            <source>too few balls were driven to a cushion on the break</source>
            <translation>trop peu de billes ont été envoyées à la bande à la casse</translation>
        </message>
        <message>
            <source>Did balls still move when the shot began?</source>
            <translation>Des billes bougeaient-elles encore au début du coup ?</translation>
        </message>
        <message>
            <source>Did the cue ball lie behind the head string?</source>
            <translation>La blanche était-elle derrière la ligne de tête ?</translation>
        </message>
        <message>
            <source>The film does not show the shot well enough. What happened?</source>
            <translation>Le film ne montre pas assez bien le coup. Que s’est-il passé ?</translation>
        </message>
        <message>
            <source>Who plays the solids and who the stripes?</source>
            <translation>Qui joue les pleines et qui les rayées ?</translation>
        </message>
        <message>
            <source>How many balls fell or passed the head string on the break?</source>
            <translation>Combien de billes sont tombées ou ont passé la ligne de tête à la casse ?</translation>
        </message>
        <message>
            <source>Was a push-out announced?</source>
            <translation>Un push-out a-t-il été annoncé ?</translation>
        </message>
        <message>
            <source>Was the player told of two fouls in a row?</source>
            <translation>Le joueur a-t-il été prévenu de ses deux fautes de suite ?</translation>
        </message>
        <message>
            <source>Other balls lie on the table than the shots before left there. Which are in play?</source>
            <translation>Les billes sur la table ne sont pas celles que les coups précédents y ont laissées. Lesquelles sont en jeu ?</translation>
        </message>
        <message>
            <source>The rules do not spell this case out. How is it ruled?</source>
            <translation>Les règles ne précisent pas ce cas. Quelle est la décision ?</translation>
        </message>
        <message>
            <source>The frame was over before this shot. Was it?</source>
            <translation>La partie était finie avant ce coup. Est-ce exact ?</translation>
        </message>
        <message>
            <source>play from here</source>
            <translation>jouer la position telle quelle</translation>
        </message>
        <message>
            <source>take the cue ball in hand</source>
            <translation>prendre la blanche en main</translation>
        </message>
        <message>
            <source>take it behind the head string</source>
            <translation>prendre la blanche derrière la ligne de tête</translation>
        </message>
        <message>
            <source>have the balls racked and break</source>
            <translation>faire replacer les billes et casser</translation>
        </message>
        <message>
            <source>have %1 break again</source>
            <translation>faire recasser %1</translation>
        </message>
        <message>
            <source>have the 8 spotted and play</source>
            <translation>faire remettre la 8 sur la mouche et jouer</translation>
        </message>
        <message>
            <source>have %1 play on</source>
            <translation>laisser continuer %1</translation>
        </message>
        <message>
            <source>the 8 was potted as called</source>
            <translation>la 8 a été empochée comme annoncé</translation>
        </message>
        <message>
            <source>the 8 fell on a foul</source>
            <translation>la 8 est tombée sur une faute</translation>
        </message>
        <message>
            <source>the 8 fell before its time</source>
            <translation>la 8 est tombée trop tôt</translation>
        </message>
        <message>
            <source>the 8 fell into a pocket that was not called</source>
            <translation>la 8 est tombée dans une poche non annoncée</translation>
        </message>
        <message>
            <source>the 8 left the table</source>
            <translation>la 8 a quitté la table</translation>
        </message>
        <message>
            <source>the 8 fell on the break</source>
            <translation>la 8 est tombée à la casse</translation>
        </message>
        <message>
            <source>the 8 and the cue ball fell on the break</source>
            <translation>la 8 et la blanche sont tombées à la casse</translation>
        </message>
        <message>
            <source>the cue ball was lost with the 8 on</source>
            <translation>blanche perdue en jouant la 8</translation>
        </message>
        <message>
            <source>the 9 was potted</source>
            <translation>la 9 a été empochée</translation>
        </message>
        <message>
            <source>the 10 was potted as called</source>
            <translation>la 10 a été empochée comme annoncé</translation>
        </message>
        <message>
            <source>the points are reached</source>
            <translation>les points sont atteints</translation>
        </message>
        <message>
            <source>three fouls in a row</source>
            <translation>trois fautes de suite</translation>
        </message>
        <message>
            <source>the other conceded</source>
            <translation>l’autre joueur a abandonné</translation>
        </message>
        <message>
            <source>ruled by a person</source>
            <translation>décidé par une personne</translation>
        </message>
        <message>
            <source>the solids</source>
            <translation>les pleines</translation>
        </message>
        <message>
            <source>the stripes</source>
            <translation>les rayées</translation>
        </message>
        <message>
            <source>cue ball in hand behind the head string</source>
            <translation>blanche en main derrière la ligne de tête</translation>
        </message>
        <message>
            <source>cue ball in hand</source>
            <translation>blanche en main</translation>
        </message>
        <message>
            <source>cue ball on the head spot</source>
            <translation>blanche sur la mouche de tête</translation>
        </message>
        <message>
            <source>cue ball on the centre spot</source>
            <translation>blanche sur la mouche centrale</translation>
        </message>
        <message>
            <source>rules before 2008</source>
            <translation>règles d’avant 2008</translation>
        </message>
        <message>
            <source>house rule</source>
            <translation>règle maison</translation>
        </message>
        <message>
            <source>world rules 2008, %1</source>
            <translation>règles mondiales 2008, %1</translation>
        </message>
        <message>
            <source>world rules 2016, %1</source>
            <translation>règles mondiales 2016, %1</translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message>
            <source>Practice without a referee</source>
            <translation>Entraînement sans arbitre</translation>
        </message>
        <message>
            <source>%1 won: %2.</source>
            <translation>%1 a gagné : %2.</translation>
        </message>
        <message>
            <source>%1 breaks</source>
            <translation>%1 casse</translation>
        </message>
        <message>
            <source>%1 is at the table, %2 to %3</source>
            <comment>player, points of the first and the second seat</comment>
            <translation>%1 est à la table, %2 à %3</translation>
        </message>
        <message>
            <source>%1 is on the 8</source>
            <translation>%1 joue la 8</translation>
        </message>
        <message>
            <source>%1 is at the table and has %2</source>
            <translation>%1 est à la table et joue %2</translation>
        </message>
        <message>
            <source>%1 is at the table</source>
            <translation>%1 est à la table</translation>
        </message>
        <message>
            <source>Choose the ball that is played for, then say what happened.</source>
            <translation>Choisissez la bille jouée, puis dites ce qui s’est passé.</translation>
        </message>
        <message>
            <source>%1; choose its pocket.</source>
            <translation>%1 ; choisissez sa poche.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 vers %2</translation>
        </message>
        <message>
            <source>%1, cut %2</source>
            <comment>ball to pocket, angle</comment>
            <translation>%1, coupe %2</translation>
        </message>
        <message>
            <source>%1  %2, %3</source>
            <comment>rank, plan, speed</comment>
            <translation>%1  %2, %3</translation>
        </message>
        <message>
            <source>easy</source>
            <translation>facile</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>moyen</translation>
        </message>
        <message>
            <source>hard</source>
            <translation>difficile</translation>
        </message>
        <message>
            <source>very hard</source>
            <translation>très difficile</translation>
        </message>
        <message>
            <source>%1 for this player: the aim may be off by %2 to the left and %3 to the right.</source>
            <translation>%1 pour ce joueur : la visée peut dévier de %2 à gauche et de %3 à droite.</translation>
        </message>
        <message>
            <source>The record holds no measured pot of this player; a club player stands in.</source>
            <translation>Le carnet ne contient aucune tentative mesurée de ce joueur ; un joueur de club en tient lieu.</translation>
        </message>
        <message numerus="yes">
            <source>Aim spread %1, from %n measured shot(s).</source>
            <translation>
                <numerusform>Dispersion de la visée %1, d’après %n coup mesuré.</numerusform>
                <numerusform>Dispersion de la visée %1, d’après %n coups mesurés.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SetUpWords</name>
        <message>
            <source>%1 to the foot</source>
            <translation>%1 vers le pied</translation>
        </message>
        <message>
            <source>%1 to the head</source>
            <translation>%1 vers la tête</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>%1 vers la gauche</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>%1 vers la droite</translation>
        </message>
        <message>
            <source>%1 is not at its place.</source>
            <translation>%1 n’est pas à sa place.</translation>
        </message>
        <message>
            <source>%1: %2 off, stands.</source>
            <translation>%1 : écart de %2, en place.</translation>
        </message>
        <message>
            <source>%1: %2 off; move it %3.</source>
            <comment>a ball, a length, where</comment>
            <translation>%1 : écart de %2 ; déplacer de %3.</translation>
        </message>
        <message>
            <source>Loose balls are missing, or lie too close to each other or to a cushion.</source>
            <translation>Des billes libres manquent, ou sont trop près les unes des autres ou d’une bande.</translation>
        </message>
        <message>
            <source>The cue ball in hand is not where it may lie.</source>
            <translation>La blanche en main n’est pas là où elle peut être.</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) lie there that do not belong to the set-up.</source>
            <translation>
                <numerusform>%n bille ne fait pas partie de la position.</numerusform>
                <numerusform>%n billes ne font pas partie de la position.</numerusform>
            </translation>
        </message>
        <message>
            <source>Set up within %1: the try may begin.</source>
            <translation>En place à %1 près : l’essai peut commencer.</translation>
        </message>
        <message>
            <source>Not yet within %1.</source>
            <translation>Pas encore à %1 près.</translation>
        </message>
    </context>
    <context>
        <name>SetupSteps</name>
        <message>
            <source>Table</source>
            <translation>Table</translation>
        </message>
        <message>
            <source>Balls</source>
            <translation>Billes</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>Caméra</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>Objectif</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Repères</translation>
        </message>
        <message>
            <source>Rig</source>
            <translation>Calage</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Vérification</translation>
        </message>
        <message>
            <source>Trust</source>
            <translation>Confiance</translation>
        </message>
        <message>
            <source>Projector</source>
            <translation>Projecteur</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>Enregistrement</translation>
        </message>
        <message>
            <source>Choose the table's size, or measure it from cushion nose to cushion nose.</source>
            <translation>Choisissez la taille de la table, ou mesurez-la de nez de bande à nez de bande.</translation>
        </message>
        <message>
            <source>A ball's size tells how high its middle lies above the cloth, and where a pocket takes it.</source>
            <translation>La taille d’une bille dit à quelle hauteur son centre se trouve au-dessus du tapis, et où une poche la prend.</translation>
        </message>
        <message>
            <source>Film the whole table as you will film play, and choose that film or a still of it.</source>
            <translation>Filmez toute la table comme vous filmerez le jeu, et choisissez ce film ou une image qui en est tirée.</translation>
        </message>
        <message>
            <source>Every lens bends the picture. Stills of a printed board show how much, and where.</source>
            <translation>Tout objectif courbe l’image. Des photos d’une mire imprimée montrent de combien, et où.</translation>
        </message>
        <message>
            <source>Four printed tags on the rails tell where the camera sits.</source>
            <translation>Quatre repères imprimés sur le cadre disent où se trouve la caméra.</translation>
        </message>
        <message>
            <source>Lens, tags and film together give the camera's place over this table.</source>
            <translation>Objectif, repères et film réunis donnent la position de la caméra au-dessus de cette table.</translation>
        </message>
        <message>
            <source>Does everything belong together? The film itself is asked.</source>
            <translation>Tout concorde-t-il ? C’est le film lui-même qui répond.</translation>
        </message>
        <message>
            <source>How far a ball may be off, where that comes from, and what it is worth in a shot.</source>
            <translation>De combien une bille peut être décalée, d’où cela vient et ce que cela vaut dans un coup.</translation>
        </message>
        <message>
            <source>If a projector hangs over the table: let the camera see where its light falls.</source>
            <translation>Si un projecteur est suspendu au-dessus de la table : laissez la caméra voir où tombe sa lumière.</translation>
        </message>
        <message>
            <source>Save the files; films of this table are measured with them from now on.</source>
            <translation>Enregistrez les fichiers ; les films de cette table seront désormais mesurés avec eux.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Prudence</translation>
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
            <translation>trouvée</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>non trouvée</translation>
        </message>
        <message>
            <source>old layout: print the board anew</source>
            <translation>ancienne disposition : réimprimez la mire</translation>
        </message>
        <message>
            <source>mirrored: not used</source>
            <translation>inversée : non utilisée</translation>
        </message>
        <message>
            <source>blurred: not used</source>
            <translation>floue : non utilisée</translation>
        </message>
        <message>
            <source>same as %1: counts once</source>
            <translation>identique à %1 : compte une fois</translation>
        </message>
        <message>
            <source>other size: not used</source>
            <translation>autre taille : non utilisée</translation>
        </message>
        <message>
            <source>not a picture: not used</source>
            <translation>pas une image : non utilisé</translation>
        </message>
        <message>
            <source>Looking for the board</source>
            <translation>Recherche de la mire</translation>
        </message>
        <message>
            <source>Looking for the tags</source>
            <translation>Recherche des repères</translation>
        </message>
        <message>
            <source>Looking for the cushions</source>
            <translation>Recherche des bandes</translation>
        </message>
        <message>
            <source>Looking at the film</source>
            <translation>Examen du film</translation>
        </message>
        <message>
            <source>Comparing what could be wrong</source>
            <translation>Comparaison des défauts possibles</translation>
        </message>
        <message>
            <source>Working it out</source>
            <translation>Calcul en cours</translation>
        </message>
        <message>
            <source>The lens foretells the board's corners to %1 px (rms) over %2 of %3 stills, out to %4 % of the way to the picture's corners.</source>
            <translation>L’objectif prédit les coins de la mire à %1 px (rms) près sur %2 photos sur %3, jusqu’à %4 % du chemin vers les coins de l’image.</translation>
        </message>
        <message>
            <source>Beyond that the lens is a guess: add stills with the board in the corners.</source>
            <translation>Au-delà, l’objectif est deviné : ajoutez des photos avec la mire dans les coins.</translation>
        </message>
        <message>
            <source>Turn</source>
            <translation>Rotation</translation>
        </message>
        <message>
            <source>Image size</source>
            <translation>Taille de l’image</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>Objectif</translation>
        </message>
        <message>
            <source>Camera's place</source>
            <translation>Position de la caméra</translation>
        </message>
        <message>
            <source>Height of the tags</source>
            <translation>Hauteur des repères</translation>
        </message>
        <message>
            <source>Finding the ball</source>
            <translation>Détection de la bille</translation>
        </message>
        <message>
            <source>Ball and bed</source>
            <translation>Bille et ardoise</translation>
        </message>
        <message>
            <source>Rows read in turn</source>
            <translation>Lignes lues l’une après l’autre</translation>
        </message>
        <message>
            <source>Measure the tags' corners again with a steel rule, and lay them far apart.</source>
            <translation>Mesurez de nouveau les coins des repères à la règle métallique, et éloignez-les les uns des autres.</translation>
        </message>
        <message>
            <source>Add stills of the board, tilted and out to the picture's corners.</source>
            <translation>Ajoutez des photos de la mire, inclinée et jusque dans les coins de l’image.</translation>
        </message>
        <message>
            <source>Measure the height of the tags above the cloth with a depth gauge.</source>
            <translation>Mesurez la hauteur des repères au-dessus du tapis avec une jauge de profondeur.</translation>
        </message>
        <message>
            <source>Use a larger picture, more even light, or a cloth that differs from the balls.</source>
            <translation>Utilisez une image plus grande, une lumière plus régulière, ou un tapis qui se distingue des billes.</translation>
        </message>
        <message>
            <source>Nothing is gained here: balls and bed are as even as they are made.</source>
            <translation>Rien à gagner ici : les billes et l’ardoise sont aussi régulières que leur fabrication le permet.</translation>
        </message>
        <message>
            <source>A camera that reads all rows at once would help moving balls; those at rest need none.</source>
            <translation>Une caméra qui lit toutes les lignes à la fois aiderait pour les billes en mouvement ; celles au repos n’en ont pas besoin.</translation>
        </message>
        <message>
            <source>Cut %1 ± %2; the ball comes %3 mm (rms) off the pocket's middle, where there are %4 mm to either side. Somebody who plays perfectly on these places pots %5 %.</source>
            <translation>Coupe %1 ± %2 ; la bille arrive à %3 mm (rms) du milieu de la poche, où il y a %4 mm de chaque côté. Quelqu’un qui jouerait parfaitement sur ces positions réussirait %5 % des coups.</translation>
        </message>
    </context>
    <context>
        <name>ShotChartWords</name>
        <message>
            <source>%1, shot %2</source>
            <translation>%1, coup %2</translation>
        </message>
        <message>
            <source>the last %1 of %2 shots</source>
            <translation>les %1 derniers coups sur %2</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>Exécutions sur la cible</translation>
        </message>
        <message>
            <source>aim: left – right</source>
            <translation>visée : gauche – droite</translation>
        </message>
        <message>
            <source>speed: harder, softer</source>
            <translation>vitesse : plus fort, plus doux</translation>
        </message>
        <message>
            <source>Hollow: missed pots. Ellipse: 95 of 100 shots.</source>
            <translation>Symboles creux : tentatives manquées. Ellipse : 95 coups sur 100.</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>Où le procédé a touché la bille</translation>
        </message>
        <message>
            <source>side %1 R, height %2 R</source>
            <translation>côté %1 R, hauteur %2 R</translation>
        </message>
        <message>
            <source>As seen along the cue. Dashed: miscue limit. Hollow: missed pots.</source>
            <translation>Vu dans l’axe de la queue. Tirets : limite de fausse queue. Symboles creux : tentatives manquées.</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>Vitesse demandée et obtenue</translation>
        </message>
        <message>
            <source>On the dashed line both agree. Hollow: missed pots.</source>
            <translation>Sur la ligne en tirets, les deux concordent. Symboles creux : tentatives manquées.</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>Où la blanche s’est arrêtée</translation>
        </message>
        <message>
            <source>along the table, + to the foot, mm</source>
            <translation>en long, + vers le pied, mm</translation>
        </message>
        <message>
            <source>across the table, mm</source>
            <translation>en travers, mm</translation>
        </message>
        <message>
            <source>%1 mm along, %2 mm across</source>
            <translation>%1 mm en long, %2 mm en travers</translation>
        </message>
        <message>
            <source>The middle is where it was asked to rest. Ellipse: 95 of 100 shots.</source>
            <translation>Le centre est l’arrêt demandé. Ellipse : 95 coups sur 100.</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>Carte des coups manqués</translation>
        </message>
        <message>
            <source>%1 thick, %2 thin</source>
            <translation>%1 plein, %2 fin</translation>
        </message>
        <message>
            <source>too thick, %1, cut %2</source>
            <translation>trop plein, %1, coupe %2</translation>
        </message>
        <message>
            <source>too thin, %1, cut %2</source>
            <translation>trop fin, %1, coupe %2</translation>
        </message>
        <message>
            <source>Object balls that were missed, head on the left. Filled: too thick, hollow: too thin. At the pockets: what was missed there.</source>
            <translation>Billes visées manquées, tête à gauche. Disque rempli : trop plein, creux : trop fin. Aux poches : ce qui y a été manqué.</translation>
        </message>
        <message>
            <source>Where nobody said what was meant, the mean of the repeated set-up stands in.</source>
            <translation>Quand personne n’a dit ce qui était voulu, la moyenne de la position répétée en tient lieu.</translation>
        </message>
        <message>
            <source>aim %1°, speed %2</source>
            <translation>visée %1°, vitesse %2</translation>
        </message>
        <message>
            <source>asked, %1</source>
            <comment>a unit of speed</comment>
            <translation>demandée, %1</translation>
        </message>
        <message>
            <source>delivered, %1</source>
            <comment>a unit of speed</comment>
            <translation>obtenue, %1</translation>
        </message>
        <message>
            <source>asked %1, delivered %2</source>
            <comment>two speeds</comment>
            <translation>demandée %1, obtenue %2</translation>
        </message>
        <message>
            <source>Where nobody said, the leave of the plan stands in that the shot was read as.</source>
            <translation>Quand personne ne l’a dit, l’arrêt du plan reconnu dans le coup en tient lieu.</translation>
        </message>
    </context>
    <context>
        <name>ShotComparison</name>
        <message>
            <source>Aim</source>
            <translation>Direction</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Vitesse</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>Attaque, côté</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>Attaque, hauteur</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Inclinaison</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Coupe</translation>
        </message>
        <message>
            <source>Line error</source>
            <translation>Erreur de ligne</translation>
        </message>
        <message>
            <source>Cue ball at rest</source>
            <translation>Blanche à l’arrêt</translation>
        </message>
        <message>
            <source>%1 apart</source>
            <translation>écart de %1</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Résultat</translation>
        </message>
    </context>
    <context>
        <name>ShotWords</name>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>à %1 de la bande de pied</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>à %1 de la bande de tête</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>à %1 de la bande gauche</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>à %1 de la bande droite</translation>
        </message>
        <message>
            <source>the cue ball was hidden</source>
            <translation>la blanche était cachée</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Direction</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Vitesse</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>Attaque, côté</translation>
        </message>
        <message>
            <source>nothing that it did shows the spin</source>
            <translation>rien dans son trajet ne montre l’effet</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>Attaque, hauteur</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>Inclinaison</translation>
        </message>
        <message>
            <source>no curve and no hop</source>
            <translation>ni courbe ni saut</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>coupe %1</translation>
        </message>
        <message>
            <source>%1 to the ball</source>
            <translation>%1 jusqu’à la bille</translation>
        </message>
        <message>
            <source>%1 to the pocket</source>
            <translation>%1 jusqu’à la poche</translation>
        </message>
        <message>
            <source>%1 left the pocket's middle by %2</source>
            <translation>%1 est passée à %2 du milieu de la poche</translation>
        </message>
        <message>
            <source>, %1 at the pocket</source>
            <translation>, %1 à la poche</translation>
        </message>
        <message>
            <source>: cut too much, thin</source>
            <translation> : trop coupée, trop fin</translation>
        </message>
        <message>
            <source>: cut too little, thick</source>
            <translation> : pas assez coupée, trop plein</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <comment>ball, along, across</comment>
            <translation>%1 : %2, %3</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) did not move.</source>
            <translation>
                <numerusform>%n bille n’a pas bougé.</numerusform>
                <numerusform>%n billes n’ont pas bougé.</numerusform>
            </translation>
        </message>
        <message>
            <source>corrected by hand</source>
            <translation>corrigé à la main</translation>
        </message>
        <message>
            <source>Not a clean reading: %1.</source>
            <translation>Lecture douteuse : %1.</translation>
        </message>
        <message>
            <source>Ruled before: %1</source>
            <translation>Décision précédente : %1</translation>
        </message>
        <message>
            <source>To be settled: %1</source>
            <translation>À trancher : %1</translation>
        </message>
        <message>
            <source>Ruled before a correction: %1</source>
            <translation>Décidé avant une correction : %1</translation>
        </message>
    </context>
    <context>
        <name>TradeWords</name>
        <message>
            <source>%1 o'clock</source>
            <comment>a place on the ball's face</comment>
            <translation>%1 h</translation>
        </message>
        <message>
            <source>half past twelve</source>
            <translation>12 h 30</translation>
        </message>
        <message>
            <source>half past one</source>
            <translation>1 h 30</translation>
        </message>
        <message>
            <source>half past two</source>
            <translation>2 h 30</translation>
        </message>
        <message>
            <source>half past three</source>
            <translation>3 h 30</translation>
        </message>
        <message>
            <source>half past four</source>
            <translation>4 h 30</translation>
        </message>
        <message>
            <source>half past five</source>
            <translation>5 h 30</translation>
        </message>
        <message>
            <source>half past six</source>
            <translation>6 h 30</translation>
        </message>
        <message>
            <source>half past seven</source>
            <translation>7 h 30</translation>
        </message>
        <message>
            <source>half past eight</source>
            <translation>8 h 30</translation>
        </message>
        <message>
            <source>half past nine</source>
            <translation>9 h 30</translation>
        </message>
        <message>
            <source>half past ten</source>
            <translation>10 h 30</translation>
        </message>
        <message>
            <source>half past eleven</source>
            <translation>11 h 30</translation>
        </message>
        <message>
            <source>the cue ball</source>
            <translation>la blanche</translation>
        </message>
        <message>
            <source>the %1</source>
            <comment>an object ball by its number</comment>
            <translation>la %1</translation>
        </message>
        <message>
            <source>The cue ball</source>
            <translation>La blanche</translation>
        </message>
        <message>
            <source>The %1</source>
            <comment>an object ball by its number</comment>
            <translation>La %1</translation>
        </message>
        <message>
            <source>cue</source>
            <comment>cue ball, in a narrow list</comment>
            <translation>blanche</translation>
        </message>
        <message>
            <source>head-left</source>
            <translation>tête gauche</translation>
        </message>
        <message>
            <source>head-right</source>
            <translation>tête droite</translation>
        </message>
        <message>
            <source>side-left</source>
            <translation>milieu gauche</translation>
        </message>
        <message>
            <source>side-right</source>
            <translation>milieu droit</translation>
        </message>
        <message>
            <source>foot-left</source>
            <translation>pied gauche</translation>
        </message>
        <message>
            <source>foot-right</source>
            <translation>pied droit</translation>
        </message>
        <message>
            <source>the head cushion</source>
            <translation>la bande de tête</translation>
        </message>
        <message>
            <source>the foot cushion</source>
            <translation>la bande de pied</translation>
        </message>
        <message>
            <source>the left-head cushion</source>
            <translation>la bande gauche côté tête</translation>
        </message>
        <message>
            <source>the left-foot cushion</source>
            <translation>la bande gauche côté pied</translation>
        </message>
        <message>
            <source>the right-head cushion</source>
            <translation>la bande droite côté tête</translation>
        </message>
        <message>
            <source>the right-foot cushion</source>
            <translation>la bande droite côté pied</translation>
        </message>
        <message>
            <source>made</source>
            <translation>réussi</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>manqué</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>défense</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>blanche perdue</translation>
        </message>
        <message>
            <source>foul</source>
            <translation>faute</translation>
        </message>
        <message>
            <source>break</source>
            <translation>casse</translation>
        </message>
        <message>
            <source>certain</source>
            <translation>certain</translation>
        </message>
        <message>
            <source>likely</source>
            <translation>probable</translation>
        </message>
        <message>
            <source>cannot be decided from the film: please check</source>
            <translation>le film ne permet pas d’en décider : veuillez vérifier</translation>
        </message>
        <message>
            <source>eight-ball</source>
            <translation>jeu de la 8</translation>
        </message>
        <message>
            <source>nine-ball</source>
            <translation>jeu de la 9</translation>
        </message>
        <message>
            <source>ten-ball</source>
            <translation>jeu de la 10</translation>
        </message>
        <message>
            <source>straight pool</source>
            <translation>14/1 continu</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>two balls</comment>
            <translation>%1 touche %2</translation>
        </message>
        <message>
            <source>%1 meets a ball</source>
            <translation>%1 touche une bille</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>ball and cushion</comment>
            <translation>%1 touche %2</translation>
        </message>
        <message>
            <source>%1 meets a cushion</source>
            <translation>%1 touche une bande</translation>
        </message>
        <message>
            <source>%1 falls, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1 tombe, poche %2</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1 tombe</translation>
        </message>
        <message>
            <source>%1 leaves the table</source>
            <translation>%1 quitte la table</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball and pocket</comment>
            <translation>%1 vers %2</translation>
        </message>
        <message>
            <source>off %1</source>
            <comment>the first ball met</comment>
            <translation>sur %1</translation>
        </message>
        <message>
            <source>no ball met</source>
            <translation>aucune bille touchée</translation>
        </message>
        <message>
            <source>thin</source>
            <translation>trop fine</translation>
        </message>
        <message>
            <source>thick</source>
            <translation>trop pleine</translation>
        </message>
        <message>
            <source>Shot %1: the break</source>
            <translation>Coup %1 : la casse</translation>
        </message>
        <message>
            <source>no ball</source>
            <translation>aucune bille</translation>
        </message>
        <message>
            <source>Shot %1: met %2, %3</source>
            <translation>Coup %1 : %2 touchée, %3</translation>
        </message>
        <message>
            <source>missed %1</source>
            <comment>thin or thick</comment>
            <translation>manqué %1</translation>
        </message>
        <message>
            <source>Shot %1: %2 to %3, %4</source>
            <translation>Coup %1 : %2 vers %3, %4</translation>
        </message>
        <message>
            <source>Struck at the centre, as far as can be seen.</source>
            <translation>Frappée au centre, pour autant qu’on puisse voir.</translation>
        </message>
        <message>
            <source>Struck at about %1, %2 from the centre.</source>
            <translation>Frappée à environ %1, à %2 du centre.</translation>
        </message>
        <message>
            <source>pocketed: %1</source>
            <comment>balls</comment>
            <translation>empochées : %1</translation>
        </message>
        <message>
            <source>also pocketed: %1</source>
            <comment>balls</comment>
            <translation>empochées aussi : %1</translation>
        </message>
    </context>
    <context>
        <name>ferrule::AboutPage</name>
        <message>
            <source>About Ferrule</source>
            <translation>À propos de Ferrule</translation>
        </message>
        <message>
            <source>Ferrule %1 turns film of a cue-sports table into measured shots.</source>
            <translation>Ferrule %1 transforme le film d’une table de billard en coups mesurés.</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Prudence</translation>
        </message>
        <message>
            <source>Hang a camera or a projector over people only from fixings rated for the load, with a safety tether.</source>
            <translation>Ne suspendre une caméra ou un projecteur au-dessus de personnes qu’avec des fixations prévues pour la charge et une élingue de sécurité.</translation>
        </message>
        <message>
            <source>Leave mains work to a licensed electrician; local codes come first.</source>
            <translation>Confier le travail sur le secteur à un électricien qualifié ; les règles locales priment.</translation>
        </message>
        <message>
            <source>Never look into the projector's beam, and never let a person lean into it.</source>
            <translation>Ne jamais regarder dans le faisceau du projecteur, ni laisser quelqu’un s’y pencher.</translation>
        </message>
        <message>
            <source>Jump shots: protect the eyes and keep the space around the table clear.</source>
            <translation>Coups sautés : protéger les yeux et dégager l’espace autour de la table.</translation>
        </message>
        <message>
            <source>Film people, minors above all, only with consent, and as local law allows.</source>
            <translation>Ne filmer des personnes, surtout mineures, qu’avec consentement et dans le respect de la loi locale.</translation>
        </message>
        <message>
            <source>The numbers carry their uncertainty: believe no millimetre that the error map does not give.</source>
            <translation>Les nombres portent leur incertitude : ne croyez aucun millimètre que la carte d’erreur ne donne pas.</translation>
        </message>
        <message>
            <source>Your data</source>
            <translation>Vos données</translation>
        </message>
        <message>
            <source>Everything stays on this computer, in files that only you can read; nothing is sent anywhere.</source>
            <translation>Tout reste sur cet ordinateur, dans des fichiers que vous seul pouvez lire ; rien n’est envoyé.</translation>
        </message>
        <message>
            <source>Licence</source>
            <translation>Licence</translation>
        </message>
        <message>
            <source>Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
            <translation>Logiciel libre sous licence publique générale GNU (GNU General Public License), version 3 ou ultérieure. Sans aucune garantie.</translation>
        </message>
        <message>
            <source>Made with</source>
            <translation>Réalisé avec</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallTray</name>
        <message>
            <source>Balls off the table</source>
            <translation>Billes hors de la table</translation>
        </message>
        <message>
            <source>Every ball is on the table.</source>
            <translation>Toutes les billes sont sur la table.</translation>
        </message>
        <message>
            <source>Off the table:</source>
            <translation>Hors de la table :</translation>
        </message>
        <message>
            <source>Put %1 on the table</source>
            <translation>Poser %1 sur la table</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallsPage</name>
        <message>
            <source>A ball's diameter</source>
            <translation>Diamètre d’une bille</translation>
        </message>
        <message>
            <source>&amp;Diameter</source>
            <translation>&amp;Diamètre</translation>
        </message>
        <message>
            <source>A ball's weight</source>
            <translation>Poids d’une bille</translation>
        </message>
        <message>
            <source> g</source>
            <translation> g</translation>
        </message>
        <message>
            <source>&amp;Weight</source>
            <translation>&amp;Poids</translation>
        </message>
        <message>
            <source>Lay five balls in a row against a straight edge and measure from end to end: a fifth of it is the diameter, five times as exact. Balls of the world specification have 57.15 mm and 156 to 170 g.</source>
            <translation>Alignez cinq billes contre un bord droit et mesurez d’un bout à l’autre : un cinquième donne le diamètre, cinq fois plus précis. Les billes conformes aux normes mondiales mesurent 57,15 mm et pèsent 156 à 170 g.</translation>
        </message>
        <message>
            <source>the balls' diameter</source>
            <translation>diamètre des billes</translation>
        </message>
        <message>
            <source>the balls' weight</source>
            <translation>poids des billes</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraChoice</name>
        <message>
            <source>Camera</source>
            <translation>Caméra</translation>
        </message>
        <message>
            <source>Size and rate of the images</source>
            <translation>Taille et cadence des images</translation>
        </message>
        <message>
            <source>Choose a film that stands in for the camera</source>
            <translation>Choisir un film qui remplace la caméra</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>A film of this camera, played at its own pace</source>
            <translation>Un film de cette caméra, joué à son rythme</translation>
        </message>
        <message>
            <source>Set the camera to a fixed focus and exposure: a whole number of mains periods against flicker, short enough that a fast ball is no streak. What set-up was made with must stay.</source>
            <translation>Réglez la caméra sur une mise au point et une exposition fixes : un nombre entier de périodes du secteur contre le scintillement, assez court pour qu’une bille rapide ne file pas. Ce qui a servi à l’installation doit rester.</translation>
        </message>
        <message>
            <source>The rig was made at %1 × %2; images of another size cannot be measured with it.</source>
            <translation>Le calage a été fait en %1 × %2 ; des images d’une autre taille ne peuvent pas être mesurées avec lui.</translation>
        </message>
        <message>
            <source>A film in place of a camera</source>
            <translation>Un film à la place d’une caméra</translation>
        </message>
        <message>
            <source>No camera was found: connect one, or let a film stand in to try it.</source>
            <translation>Aucune caméra trouvée : branchez-en une, ou laissez un film la remplacer pour essayer.</translation>
        </message>
        <message>
            <source>Everything happens as with a camera, also when measuring cannot keep up.</source>
            <translation>Tout se passe comme avec une caméra, même si la mesure ne suit pas.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraPage</name>
        <message>
            <source>Such as: wide camera, hall</source>
            <translation>Par exemple : caméra grand angle, salle</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>&amp;Caméra</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Film</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>Image</translation>
        </message>
        <message>
            <source>Choose a &amp;film or still…</source>
            <translation>Choisir un &amp;film ou une photo…</translation>
        </message>
        <message>
            <source>Fixed focus and exposure, a whole number of mains periods, the highest image rate; stabilisation, zoom and lens correction off. Every later step needs pictures of this size.</source>
            <translation>Mise au point et exposition fixes (exposition d’un nombre entier de périodes du secteur), cadence d’images maximale ; stabilisation, zoom et correction d’objectif désactivés. Toutes les étapes suivantes demandent des images de cette taille.</translation>
        </message>
        <message>
            <source>A camera overhead hangs over people: fix it to the building's structure with fittings rated for its load, never to a ceiling tile, and add a steel tether to a second point. Work from a proper ladder with a second person, not from the table, and secure yourself against a fall. Fixed mains wiring is the work of a licensed electrician; lead no cable where people walk. Local codes come first.</source>
            <translation>Une caméra au-dessus de la table est suspendue au-dessus des gens : fixez-la à la structure du bâtiment avec des attaches prévues pour sa charge, jamais à une dalle de faux plafond, et ajoutez une élingue d’acier à un second point. Travaillez depuis une vraie échelle, à deux, pas depuis la table, et protégez-vous contre les chutes. L’installation électrique fixe est l’affaire d’un électricien agréé ; aucun câble là où l’on marche. Les règles locales priment.</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>encore aucun</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>encore inconnu</translation>
        </message>
        <message>
            <source>%1 × %2 px</source>
            <translation>%1 × %2 px</translation>
        </message>
        <message>
            <source>%1, %2 images a second</source>
            <translation>%1, %2 images par seconde</translation>
        </message>
        <message>
            <source>%1, turned by %2° as its file says</source>
            <translation>%1, tournée de %2° selon le fichier</translation>
        </message>
        <message>
            <source>the camera's name</source>
            <translation>nom de la caméra</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraSource</name>
        <message>
            <source>The camera %1 sends no images (%2). Look at its cable, whether another program uses it, and whether this program may use cameras.</source>
            <translation>La caméra %1 n’envoie pas d’images (%2). Vérifiez son câble, si un autre programme l’utilise et si ce programme a le droit d’utiliser des caméras.</translation>
        </message>
        <message>
            <source>The camera %1 is gone; what it saw until then is kept.</source>
            <translation>La caméra %1 a disparu ; ce qu’elle a vu jusque-là est conservé.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ChainRow</name>
        <message>
            <source>then</source>
            <translation>puis</translation>
        </message>
        <message>
            <source>Sensor</source>
            <translation>Capteur</translation>
        </message>
        <message>
            <source>%1 × %2 px</source>
            <translation>%1 × %2 px</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CheckPage</name>
        <message>
            <source>Everything fits</source>
            <translation>Tout concorde</translation>
        </message>
        <message>
            <source>The camera has moved</source>
            <translation>La caméra a bougé</translation>
        </message>
        <message>
            <source>Lens of another camera</source>
            <translation>Objectif d’une autre caméra</translation>
        </message>
        <message>
            <source>Corrected twice</source>
            <translation>Corrigé deux fois</translation>
        </message>
        <message>
            <source>Not corrected</source>
            <translation>Non corrigé</translation>
        </message>
        <message>
            <source>Other size of picture</source>
            <translation>Autre taille d’image</translation>
        </message>
        <message>
            <source>Tags at another height</source>
            <translation>Repères à une autre hauteur</translation>
        </message>
        <message>
            <source>A tag at another place</source>
            <translation>Un repère à un autre endroit</translation>
        </message>
        <message>
            <source>Two tags swapped</source>
            <translation>Deux repères intervertis</translation>
        </message>
        <message>
            <source>A tag turned</source>
            <translation>Un repère tourné</translation>
        </message>
        <message>
            <source>Other size of table</source>
            <translation>Autre taille de table</translation>
        </message>
        <message>
            <source>Something does not fit</source>
            <translation>Quelque chose ne concorde pas</translation>
        </message>
        <message>
            <source>Every correction between sensor and table, in order</source>
            <translation>Toutes les corrections entre capteur et table, dans l’ordre</translation>
        </message>
        <message>
            <source>&amp;Check this film</source>
            <translation>&amp;Vérifier ce film</translation>
        </message>
        <message>
            <source>Check &amp;another film…</source>
            <translation>Vérifier un &amp;autre film…</translation>
        </message>
        <message>
            <source>Add a &amp;lens to the chain…</source>
            <translation>Ajouter un &amp;objectif à la chaîne…</translation>
        </message>
        <message>
            <source>What the film shows</source>
            <translation>Ce que montre le film</translation>
        </message>
        <message>
            <source>What else was tried</source>
            <translation>Ce qui a été essayé d’autre</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>Il n’y a pas encore de film de la table ; choisissez-en un à l’étape Caméra.</translation>
        </message>
        <message>
            <source>Add a lens to the chain</source>
            <translation>Ajouter un objectif à la chaîne</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>Fichiers d’objectif (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Not checked yet</source>
            <translation>Pas encore vérifié</translation>
        </message>
        <message>
            <source>There is no rig yet</source>
            <translation>Il n’y a pas encore de calage</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 (sure to %2 %)</source>
            <comment>what the check found, how sure</comment>
            <translation>%1 (sûr à %2 %)</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by %1 (rms), by %2 at the worst place: %3 toward the foot and %4 to the left of the middle.</source>
            <translation>En l’état, la position d’une bille est fausse de %1 (rms), de %2 au pire endroit : %3 vers le pied et %4 à gauche du milieu.</translation>
        </message>
        <message>
            <source>%1: probability %2 %, misses what is seen by %3 standard deviations</source>
            <translation>%1 : probabilité %2 %, s’écarte de ce qui est vu de %3 écarts-types</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CompareView</name>
        <message>
            <source>Plan of the shot that is held</source>
            <translation>Plan du coup gardé</translation>
        </message>
        <message>
            <source>Plan of the shot that is compared with it</source>
            <translation>Plan du coup comparé</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Valeur</translation>
        </message>
        <message>
            <source>Held</source>
            <translation>Gardé</translation>
        </message>
        <message>
            <source>Other</source>
            <translation>Autre</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Différence</translation>
        </message>
        <message>
            <source>What differs between the two shots</source>
            <translation>Ce qui diffère entre les deux coups</translation>
        </message>
        <message>
            <source>Choose the shot that is to be compared.</source>
            <translation>Choisissez le coup à comparer.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ConsentSection</name>
        <message>
            <source>Filming people, minors above all: ask first, and in writing. For a minor a parent or guardian gives consent before the camera runs; the law where you play may ask for more.</source>
            <translation>Filmer des personnes, surtout des mineurs : demandez d’abord, et par écrit. Pour un mineur, un parent ou tuteur consent avant que la caméra ne tourne ; la loi locale peut exiger davantage.</translation>
        </message>
        <message>
            <source>Who gave or withdrew it</source>
            <translation>Qui l’a donné ou retiré</translation>
        </message>
        <message>
            <source>&amp;By</source>
            <translation>&amp;Par</translation>
        </message>
        <message>
            <source>a &amp;parent or guardian</source>
            <translation>un parent ou tuteur</translation>
        </message>
        <message>
            <source>From this day on</source>
            <translation>À partir de ce jour</translation>
        </message>
        <message>
            <source>&amp;On</source>
            <translation>&amp;Le</translation>
        </message>
        <message>
            <source>Unti&amp;l</source>
            <translation>&amp;Jusqu’au</translation>
        </message>
        <message>
            <source>It ends on a day</source>
            <translation>Il finit un certain jour</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Dernier jour</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Noter</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Renew…</source>
            <translation>Renouveler…</translation>
        </message>
        <message>
            <source>Note…</source>
            <translation>Noter…</translation>
        </message>
        <message>
            <source>Note consent: %1</source>
            <translation>Noter le consentement : %1</translation>
        </message>
        <message>
            <source>Withdraw…</source>
            <translation>Retirer…</translation>
        </message>
        <message>
            <source>Withdraw consent: %1</source>
            <translation>Retirer le consentement : %1</translation>
        </message>
        <message>
            <source>Consent given: %1</source>
            <translation>Consentement donné : %1</translation>
        </message>
        <message>
            <source>Consent withdrawn: %1</source>
            <translation>Consentement retiré : %1</translation>
        </message>
        <message>
            <source>Name of the parent or guardian</source>
            <translation>Nom du parent ou tuteur</translation>
        </message>
        <message>
            <source>Say who gave or withdrew consent.</source>
            <translation>Dites qui a donné ou retiré le consentement.</translation>
        </message>
        <message>
            <source>The consent would end before it begins; choose a later last day.</source>
            <translation>Le consentement finirait avant de commencer ; choisissez un dernier jour plus tardif.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CoverageView</name>
        <message>
            <source>The board was seen in %1 % of the picture</source>
            <translation>La mire a été vue dans %1 % de l’image</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DetailPanel</name>
        <message>
            <source>Left and right exchanged</source>
            <translation>Gauche et droite échangées</translation>
        </message>
        <message>
            <source>Head and foot exchanged</source>
            <translation>Tête et pied échangés</translation>
        </message>
        <message>
            <source>Spread the balls anew</source>
            <translation>Redisperser les billes</translation>
        </message>
        <message>
            <source>Whose run it is; may stay empty</source>
            <translation>À qui est la série ; peut rester vide</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>&amp;Joueur</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>Une taille courante, ou le chemin d’un fichier de table</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Table</translation>
        </message>
        <message>
            <source>Begin a run</source>
            <translation>Commencer une série</translation>
        </message>
        <message>
            <source>Or find the tries in a session that was recorded:</source>
            <translation>Ou trouver les essais dans une séance enregistrée :</translation>
        </message>
        <message>
            <source>Recorded session</source>
            <translation>Séance enregistrée</translation>
        </message>
        <message>
            <source>Count its tries</source>
            <translation>Compter les essais</translation>
        </message>
        <message>
            <source>Edit</source>
            <translation>Modifier</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Supprimer</translation>
        </message>
        <message>
            <source>Its runs stay; undo brings it back</source>
            <translation>Ses séries restent ; annuler le ramène</translation>
        </message>
        <message>
            <source>Copy and change</source>
            <translation>Copier et changer</translation>
        </message>
        <message>
            <source>Export…</source>
            <translation>Exporter…</translation>
        </message>
        <message>
            <source>A try counts when: %1; %2 tries.</source>
            <translation>Un essai compte quand : %1 ; %2 essais.</translation>
        </message>
        <message>
            <source>Cue ball in hand.</source>
            <translation>Blanche en main.</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>Essais qui ont atteint chaque but</translation>
        </message>
        <message>
            <source>No run yet: how the tries come out over the weeks will stand here.</source>
            <translation>Pas encore de série : ici se verra ce que donnent les essais au fil des semaines.</translation>
        </message>
        <message>
            <source>Not enough yet: %1 of %2 tries.</source>
            <translation>Pas encore assez : %1 essais sur %2.</translation>
        </message>
        <message>
            <source>Best run: %1, %2.</source>
            <translation>Meilleure série : %1, %2.</translation>
        </message>
        <message>
            <source>Count on while it is played</source>
            <translation>Continuer à compter pendant le jeu</translation>
        </message>
        <message>
            <source>For a session that is live or being measured from a film</source>
            <translation>Pour une séance en direct ou en cours de mesure depuis un film</translation>
        </message>
        <message>
            <source>Go on with the last run (%1 of %2)</source>
            <translation>Reprendre la dernière série (%1 sur %2)</translation>
        </message>
        <message>
            <source>All runs together: %1, between %2 and %3, of %4 tries.</source>
            <translation>Toutes les séries ensemble : %1, entre %2 et %3, sur %4 essais.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillPicture</name>
        <message>
            <source>Set-up; in a run a click or the arrow keys put where the cue ball came to rest</source>
            <translation>Position ; pendant une série, un clic ou les flèches indiquent où la blanche s’est arrêtée</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillsPlace</name>
        <message>
            <source>Drills</source>
            <translation>Exercices</translation>
        </message>
        <message>
            <source>No shot of this session was played from the set-up of this drill.</source>
            <translation>Aucun coup de cette séance n’a été joué depuis la position de cet exercice.</translation>
        </message>
        <message numerus="yes">
            <source>%n try(s) counted: %1</source>
            <translation>
                <numerusform>%n essai compté : %1</numerusform>
                <numerusform>%n essais comptés : %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Deleted; undo brings it back. Its runs stay.</source>
            <translation>Supprimé ; annuler le ramène. Ses séries restent.</translation>
        </message>
        <message>
            <source>%1, my own</source>
            <translation>%1, à moi</translation>
        </message>
        <message>
            <source>Find a drill</source>
            <translation>Chercher un exercice</translation>
        </message>
        <message>
            <source>Kind of drill</source>
            <translation>Sorte d’exercice</translation>
        </message>
        <message>
            <source>Import…</source>
            <translation>Importer…</translation>
        </message>
        <message>
            <source>Take over the drills of a file</source>
            <translation>Reprendre les exercices d’un fichier</translation>
        </message>
        <message>
            <source>New drill</source>
            <translation>Nouvel exercice</translation>
        </message>
        <message>
            <source>My drill</source>
            <translation>Mon exercice</translation>
        </message>
        <message>
            <source>Set-up of the drill</source>
            <translation>Position de l’exercice</translation>
        </message>
        <message>
            <source>All drills</source>
            <translation>Tous les exercices</translation>
        </message>
        <message>
            <source>Set-up %1</source>
            <translation>Position %1</translation>
        </message>
        <message>
            <source>Import drills</source>
            <translation>Importer des exercices</translation>
        </message>
        <message>
            <source>Drills (*.json);;All files (*)</source>
            <translation>Exercices (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Nothing of %1 was taken over: in "%2" %3</source>
            <translation>Rien de %1 n’a été repris : dans « %2 » %3</translation>
        </message>
        <message numerus="yes">
            <source>%n drill(s) taken over.</source>
            <translation>
                <numerusform>%n exercice repris.</numerusform>
                <numerusform>%n exercices repris.</numerusform>
            </translation>
        </message>
        <message>
            <source>Export the drill</source>
            <translation>Exporter l’exercice</translation>
        </message>
        <message>
            <source>Written to %1.</source>
            <translation>Écrit dans %1.</translation>
        </message>
        <message>
            <source>Project this set-up</source>
            <translation>Projeter cette position</translation>
        </message>
        <message>
            <source>Show on the cloth where the balls belong and where they are to rest</source>
            <translation>Montrer sur le tapis où vont les billes et où elles doivent s’arrêter</translation>
        </message>
    </context>
    <context>
        <name>ferrule::EditorPanel</name>
        <message>
            <source>Keep the drill</source>
            <translation>Garder l’exercice</translation>
        </message>
        <message>
            <source>Do not keep</source>
            <translation>Ne pas garder</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>What it is f&amp;or</source>
            <translation>À qu&amp;oi il sert</translation>
        </message>
        <message>
            <source>Words with commas</source>
            <translation>Mots séparés par des virgules</translation>
        </message>
        <message>
            <source>&amp;Kinds</source>
            <translation>&amp;Sortes</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>Empocher</translation>
        </message>
        <message>
            <source>Pot and leave</source>
            <translation>Empocher et placer</translation>
        </message>
        <message>
            <source>Leave alone</source>
            <translation>Placement seul</translation>
        </message>
        <message>
            <source>Hit and hide</source>
            <translation>Toucher et cacher</translation>
        </message>
        <message>
            <source>Clear the table</source>
            <translation>Vider la table</translation>
        </message>
        <message>
            <source>As it is</source>
            <translation>Tel quel</translation>
        </message>
        <message>
            <source>&amp;Asked</source>
            <translation>&amp;Demandé</translation>
        </message>
        <message>
            <source>&amp;Tries</source>
            <translation>&amp;Essais</translation>
        </message>
        <message>
            <source>&amp;Zone's radius</source>
            <translation>Rayon de la &amp;zone</translation>
        </message>
        <message>
            <source>A jump shot: show the caution</source>
            <translation>Un coup sauté : montrer la mise en garde</translation>
        </message>
        <message>
            <source>Means the same from the other end</source>
            <translation>Identique depuis l’autre bout</translation>
        </message>
        <message>
            <source>Ball</source>
            <translation>Bille</translation>
        </message>
        <message>
            <source>Put it on the table</source>
            <translation>La poser sur la table</translation>
        </message>
        <message>
            <source>One set-up more</source>
            <translation>Une position de plus</translation>
        </message>
        <message>
            <source>Remove this set-up</source>
            <translation>Retirer cette position</translation>
        </message>
        <message>
            <source>Set-ups in turn, try by try</source>
            <translation>Positions à tour de rôle</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErasePanel</name>
        <message>
            <source>Erasing takes a player out of the record for good, with everything that is kept of the player. Export the player first if anything may be needed again.</source>
            <translation>Effacer retire définitivement un joueur du carnet, avec tout ce qui est gardé de lui. Exportez-le d’abord si quelque chose peut encore servir.</translation>
        </message>
        <message>
            <source>Show what would go…</source>
            <translation>Montrer ce qui partirait…</translation>
        </message>
        <message>
            <source>What goes and what stays</source>
            <translation>Ce qui part et ce qui reste</translation>
        </message>
        <message>
            <source>Take the name out of others' texts</source>
            <translation>Retirer le nom des textes d’autres</translation>
        </message>
        <message>
            <source>Delete the films of this player alone</source>
            <translation>Supprimer les films de ce joueur seul</translation>
        </message>
        <message>
            <source>Delete the older copies</source>
            <translation>Supprimer les copies plus anciennes</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Erase for good</source>
            <translation>Effacer définitivement</translation>
        </message>
        <message>
            <source>Erase %1 for good</source>
            <translation>Effacer %1 définitivement</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErrorMapView</name>
        <message>
            <source>How far a ball may be off, over the table</source>
            <translation>De combien une bille peut être décalée, sur toute la table</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
    </context>
    <context>
        <name>ferrule::EventListModel</name>
        <message>
            <source>Strike</source>
            <translation>Frappe</translation>
        </message>
        <message>
            <source>Every ball rests</source>
            <translation>Billes toutes arrêtées</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmPage</name>
        <message>
            <source>Progress</source>
            <translation>Progression</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>&amp;Regarder dans Relecture</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>&amp;Autre séance</translation>
        </message>
        <message>
            <source>Film and rig belong together (sure to %1 %).</source>
            <translation>Film et calage vont ensemble (sûr à %1 %).</translation>
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
            <translation>Joueur</translation>
        </message>
        <message>
            <source>Period</source>
            <translation>Période</translation>
        </message>
        <message>
            <source>All time</source>
            <translation>Depuis le début</translation>
        </message>
        <message>
            <source>Last 30 days</source>
            <translation>30 derniers jours</translation>
        </message>
        <message>
            <source>Last 90 days</source>
            <translation>90 derniers jours</translation>
        </message>
        <message>
            <source>This month</source>
            <translation>Ce mois-ci</translation>
        </message>
        <message>
            <source>Last month</source>
            <translation>Le mois dernier</translation>
        </message>
        <message>
            <source>From day to day</source>
            <translation>Entre deux dates</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Premier jour</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Dernier jour</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Table</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>Jeu</translation>
        </message>
        <message>
            <source>Practice or match</source>
            <translation>Entraînement ou match</translation>
        </message>
        <message>
            <source>Practice and matches</source>
            <translation>Entraînement et matchs</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Entraînement</translation>
        </message>
        <message>
            <source>Matches</source>
            <translation>Matchs</translation>
        </message>
        <message>
            <source>Lessons</source>
            <translation>Cours</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>Toutes les tables</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>Tous les jeux</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>Exercice</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>Poche</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>Toutes les poches</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Coupe</translation>
        </message>
        <message>
            <source>Way of the cue ball</source>
            <translation>Trajet de la blanche</translation>
        </message>
        <message>
            <source>With and without drills</source>
            <translation>Avec et sans exercices</translation>
        </message>
        <message>
            <source>Cut %1 to %2</source>
            <comment>two angles</comment>
            <translation>Coupe %1 à %2</translation>
        </message>
        <message>
            <source>Every cut</source>
            <translation>Toutes les coupes</translation>
        </message>
        <message>
            <source>Shorter than %1 widths</source>
            <translation>Plus court que %1 largeurs</translation>
        </message>
        <message>
            <source>%1 to %2 widths</source>
            <translation>%1 à %2 largeurs</translation>
        </message>
        <message>
            <source>Longer than %1 widths</source>
            <translation>Plus long que %1 largeurs</translation>
        </message>
        <message>
            <source>Every distance</source>
            <translation>Toutes les distances</translation>
        </message>
        <message>
            <source>Opponent</source>
            <translation>Adversaire</translation>
        </message>
        <message>
            <source>Every opponent</source>
            <translation>Tous les adversaires</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FirstPicture</name>
        <message>
            <source>The film's first picture</source>
            <translation>La première image du film</translation>
        </message>
        <message>
            <source>No film yet</source>
            <translation>Pas encore de film</translation>
        </message>
        <message>
            <source>A film or still of the table</source>
            <translation>Un film ou une photo de la table</translation>
        </message>
        <message>
            <source>Films and stills (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;All files (*)</source>
            <translation>Films et photos (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;Tous les fichiers (*)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::GuestBar</name>
        <message>
            <source>Who the guest was</source>
            <translation>Qui était l’invité</translation>
        </message>
        <message>
            <source>A player's name, known or new</source>
            <translation>Nom d’un joueur, connu ou nouveau</translation>
        </message>
        <message>
            <source>That is who</source>
            <translation>C’est cette personne</translation>
        </message>
        <message>
            <source>Stays a guest</source>
            <translation>Reste invité</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>Revenir en arrière</translation>
        </message>
        <message>
            <source>What %1 played is now %2's.</source>
            <comment>a guest, a player</comment>
            <translation>Ce que %1 a joué est maintenant à %2.</translation>
        </message>
        <message>
            <source>%1 and the guest played together, so they are two.</source>
            <translation>%1 et l’invité ont joué ensemble : ils sont deux.</translation>
        </message>
        <message>
            <source>A session that is not ended knows the guest: end it first.</source>
            <translation>Une séance non terminée connaît l’invité : terminez-la d’abord.</translation>
        </message>
        <message>
            <source>Who was %1?</source>
            <comment>a guest</comment>
            <translation>Qui était %1 ?</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeepPage</name>
        <message>
            <source>This set-up</source>
            <translation>Cette installation</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>Utilisée</translation>
        </message>
        <message>
            <source>&amp;Save into a folder…</source>
            <translation>&amp;Enregistrer dans un dossier…</translation>
        </message>
        <message>
            <source>&amp;Check again with a film…</source>
            <translation>&amp;Revérifier avec un film…</translation>
        </message>
        <message>
            <source>Start a &amp;new set-up</source>
            <translation>Commencer une &amp;nouvelle installation</translation>
        </message>
        <message>
            <source>table.json, lens.json and rig.json are written. Check again after another day, another film, or a ladder against the camera: it takes less than a minute.</source>
            <translation>table.json, lens.json et rig.json sont écrits. Vérifiez de nouveau un autre jour, avec un autre film, ou après un coup d’échelle dans la caméra : cela prend moins d’une minute.</translation>
        </message>
        <message>
            <source>Look at every fixing again twice a year. A loose bracket, a hot smell or a rig that wanders means: power off, and nobody plays under it. A projector hangs by the same rules as a camera; never look into its beam, and switch it to black when somebody bends over the table. Local codes come first.</source>
            <translation>Examinez chaque fixation deux fois par an. Un support desserré, une odeur de chaud ou une caméra qui bouge : coupez le courant, et personne ne joue dessous. Un projecteur se suspend selon les mêmes règles qu’une caméra ; ne regardez jamais dans son faisceau, et passez-le au noir quand quelqu’un se penche sur la table. Les règles locales priment.</translation>
        </message>
        <message>
            <source>Save the set-up into a folder</source>
            <translation>Enregistrer l’installation dans un dossier</translation>
        </message>
        <message>
            <source>Start a new set-up</source>
            <translation>Commencer une nouvelle installation</translation>
        </message>
        <message>
            <source>What was put in for this one is forgotten; files that were saved into a folder stay. Start a new set-up?</source>
            <translation>Ce qui a été saisi pour celle-ci est oublié ; les fichiers enregistrés dans un dossier restent. Commencer une nouvelle installation ?</translation>
        </message>
        <message>
            <source>not saved yet</source>
            <translation>pas encore enregistré</translation>
        </message>
        <message>
            <source>no rig yet</source>
            <translation>pas encore de calage</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>encore aucune</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>table, its rig file</comment>
            <translation>%1 : %2</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeyPage</name>
        <message>
            <source>Keys</source>
            <translation>Raccourcis clavier</translation>
        </message>
        <message>
            <source>Wheel: enlarge. Drag: move, or scrub on the time line. Double click: whole table.</source>
            <translation>Molette : agrandir. Glisser : déplacer, ou parcourir la ligne de temps. Double clic : toute la table.</translation>
        </message>
        <message>
            <source>Menu</source>
            <translation>Menu</translation>
        </message>
        <message>
            <source>Action</source>
            <translation>Action</translation>
        </message>
        <message>
            <source>What it does</source>
            <translation>Effet</translation>
        </message>
        <message>
            <source>Find an action</source>
            <translation>Trouver une action</translation>
        </message>
        <message>
            <source>Find: a word, or a key such as Ctrl</source>
            <translation>Chercher : un mot, ou une touche comme Ctrl</translation>
        </message>
    </context>
    <context>
        <name>ferrule::Legend</name>
        <message>
            <source>Solid: the way as it was measured, filled: where the taken shot would leave the cue ball. Dashed: the suggested shot, hatched: its leave. Dotted: predicted while the ball was hidden. Dot: a contact.</source>
            <translation>Trait plein : le trajet mesuré ; disque plein : où le coup joué laisserait la blanche. Tirets : le coup suggéré ; hachures : son placement. Pointillés : prédit pendant que la bille était cachée. Point : un contact.</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>the shot as it was played</comment>
            <translation>joué</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>the shot that was ranked first</comment>
            <translation>suggéré</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LensPage</name>
        <message>
            <source>&amp;No board: take the lens from the straightness of the cushions</source>
            <translation>&amp;Sans mire : déduire l’objectif de la rectitude des bandes</translation>
        </message>
        <message>
            <source>Parameter</source>
            <translation>Paramètre</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Valeur</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Incertitude</translation>
        </message>
        <message>
            <source>The lens's parameters</source>
            <translation>Les paramètres de l’objectif</translation>
        </message>
        <message>
            <source>ChArUco: squares with markers</source>
            <translation>ChArUco : cases avec marqueurs</translation>
        </message>
        <message>
            <source>Plain chessboard</source>
            <translation>Échiquier simple</translation>
        </message>
        <message>
            <source>&amp;Board</source>
            <translation>&amp;Mire</translation>
        </message>
        <message>
            <source>Columns of the board</source>
            <translation>Colonnes de la mire</translation>
        </message>
        <message>
            <source>Rows of the board</source>
            <translation>Lignes de la mire</translation>
        </message>
        <message>
            <source>Side of a square</source>
            <translation>Côté d’une case</translation>
        </message>
        <message>
            <source>Side of a marker</source>
            <translation>Côté d’un marqueur</translation>
        </message>
        <message>
            <source>Set of markers</source>
            <translation>Jeu de marqueurs</translation>
        </message>
        <message>
            <source>Counts</source>
            <translation>Nombres</translation>
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
            <translation>Faire la &amp;feuille (PDF)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Impression</translation>
        </message>
        <message>
            <source>The line across, as it measures on the paper</source>
            <translation>Le trait en largeur, tel qu’il mesure sur le papier</translation>
        </message>
        <message>
            <source>The line down, as it measures on the paper</source>
            <translation>Le trait en hauteur, tel qu’il mesure sur le papier</translation>
        </message>
        <message>
            <source>across,</source>
            <translation>en largeur,</translation>
        </message>
        <message>
            <source>down; 100 mm when the printer is true</source>
            <translation>en hauteur ; 100 mm si l’imprimante est juste</translation>
        </message>
        <message>
            <source>Lines on it</source>
            <translation>Traits imprimés</translation>
        </message>
        <message>
            <source>Glue the print to something flat. Take 15 to 30 sharp stills that together fill the picture to its corners, the board tilted in many of them. Drop files or a folder here.</source>
            <translation>Collez l’impression sur quelque chose de plat. Prenez 15 à 30 photos nettes qui, ensemble, remplissent l’image jusqu’aux coins, avec la mire inclinée sur beaucoup d’entre elles. Déposez ici des fichiers ou un dossier.</translation>
        </message>
        <message>
            <source>&amp;Add stills…</source>
            <translation>&amp;Ajouter des photos…</translation>
        </message>
        <message>
            <source>Add a fol&amp;der…</source>
            <translation>Ajouter un &amp;dossier…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Retirer</translation>
        </message>
        <message>
            <source>&amp;Calibrate</source>
            <translation>É&amp;talonner</translation>
        </message>
        <message>
            <source>&amp;Use a lens file…</source>
            <translation>&amp;Utiliser un fichier d’objectif…</translation>
        </message>
        <message>
            <source>Still</source>
            <translation>Photo</translation>
        </message>
        <message>
            <source>Board</source>
            <translation>Mire</translation>
        </message>
        <message>
            <source>Edges</source>
            <translation>Bords</translation>
        </message>
        <message>
            <source>rms</source>
            <translation>rms</translation>
        </message>
        <message>
            <source>Stills of the board</source>
            <translation>Photos de la mire</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;All files (*)</source>
            <translation>Images (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>A folder of stills</source>
            <translation>Un dossier de photos</translation>
        </message>
        <message>
            <source>Use a lens file</source>
            <translation>Utiliser un fichier d’objectif</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>Fichiers d’objectif (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>Faire la feuille</translation>
        </message>
        <message>
            <source>board.pdf</source>
            <translation>mire.pdf</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The board is in %1; print it at 100 % and measure its lines.</source>
            <translation>La mire est dans %1 ; imprimez-la à 100 % et mesurez ses traits.</translation>
        </message>
        <message>
            <source>squares of</source>
            <translation>cases de</translation>
        </message>
        <message>
            <source>inner corners, squares of</source>
            <translation>coins intérieurs, cases de</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>found, but does not fit the others</source>
            <translation>trouvée, mais ne concorde pas avec les autres</translation>
        </message>
        <message>
            <source>How wide the squares' edges are; less than 1 px is sharp</source>
            <translation>Largeur des bords des cases ; moins de 1 px est net</translation>
        </message>
        <message>
            <source>Where the board was in the picture; hatched: nowhere yet.</source>
            <translation>Où la mire était dans l’image ; hachures : nulle part encore.</translation>
        </message>
        <message numerus="yes">
            <source>%n still(s) used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</source>
            <translation>
                <numerusform>%n photo utilisée ; la mire était dans %1 % de l’image, jusqu’à %2 % du chemin vers ses coins.</numerusform>
                <numerusform>%n photos utilisées ; la mire était dans %1 % de l’image, jusqu’à %2 % du chemin vers ses coins.</numerusform>
            </translation>
        </message>
        <message>
            <source>The lens will come from the cushions with the rig; a board would make places several millimetres better.</source>
            <translation>L’objectif viendra des bandes avec le calage ; une mire améliorerait les positions de plusieurs millimètres.</translation>
        </message>
        <message>
            <source>Lens of %1 at %2 × %3 px, %4, rms %5 px.</source>
            <translation>Objectif de %1 en %2 × %3 px, %4, rms %5 px.</translation>
        </message>
        <message>
            <source>No lens yet.</source>
            <translation>Pas encore d’objectif.</translation>
        </message>
        <message>
            <source>without a board</source>
            <translation>sans mire</translation>
        </message>
        <message>
            <source>the lines on the print</source>
            <translation>lignes sur l’impression</translation>
        </message>
        <message>
            <source>the board</source>
            <translation>mire</translation>
        </message>
        <message>
            <source>Markers</source>
            <translation>Marqueurs</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesList</name>
        <message>
            <source>Noses, sights and pockets, and how far each is off</source>
            <translation>Nez, mouches et poches, et l’écart de chacun</translation>
        </message>
        <message>
            <source>Nose, sight or pocket</source>
            <translation>Nez, mouche ou poche</translation>
        </message>
        <message>
            <source>Known from</source>
            <translation>Connu par</translation>
        </message>
        <message>
            <source>Off by</source>
            <translation>Écart</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>by hand</source>
            <translation>à la main</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>non trouvé</translation>
        </message>
        <message>
            <source>the picture</source>
            <translation>l’image</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>absent</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesPanel</name>
        <message>
            <source>Look at the &amp;lines, adjust them by hand…</source>
            <translation>Voir les &amp;lignes, les ajuster à la main…</translation>
        </message>
        <message>
            <source>&amp;As they were found</source>
            <translation>&amp;Telles qu’elles ont été trouvées</translation>
        </message>
        <message>
            <source>The sight or pocket counts where it shows (insert)</source>
            <translation>La mouche ou la poche compte là où elle est montrée (inser)</translation>
        </message>
        <message>
            <source>The sight or pocket no longer counts (delete)</source>
            <translation>La mouche ou la poche ne compte plus (suppr)</translation>
        </message>
        <message>
            <source>the lines as found</source>
            <translation>lignes telles que trouvées</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a cushion</comment>
            <translation>%1 : placée à la main</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>%1 : placée à la main</translation>
        </message>
        <message>
            <source>%1 is not there</source>
            <comment>a sight or pocket</comment>
            <translation>%1 : absente</translation>
        </message>
        <message>
            <source>&amp;Look for them again</source>
            <translation>Les chercher de nouveau (&amp;l)</translation>
        </message>
        <message>
            <source>The rig is made from the noses of the cushions, the sights and the pockets, as the picture shows them; where one is missed or mistaken, place it by hand.</source>
            <translation>Le calage est fait d’après les nez des bandes, les mouches et les poches, tels que l’image les montre ; si l’un manque ou est confondu, placez-le à la main.</translation>
        </message>
        <message numerus="yes">
            <source>%n place(s) are set by hand.</source>
            <translation>
                <numerusform>%n repère est placé à la main.</numerusform>
                <numerusform>%n repères sont placés à la main.</numerusform>
            </translation>
        </message>
        <message>
            <source>Drag a nose's handles to where its cloth ends above the bed, spread from end to end and a hand's breadth from the pockets; drag a sight's diamond onto its middle, a pocket's ring onto the middle of its opening. Arrow keys move what is chosen, page up and page down go from one to the next.</source>
            <translation>Glissez les poignées d’un nez là où son tapis finit au-dessus du plateau, réparties d’un bout à l’autre et à une largeur de main des poches ; glissez le losange d’une mouche sur son milieu, l’anneau d’une poche sur le milieu de son ouverture. Les flèches déplacent ce qui est choisi, page précédente et page suivante vont de l’un à l’autre.</translation>
        </message>
        <message numerus="yes">
            <source>%n cushion(s) were not found (dashed): place them.</source>
            <translation>
                <numerusform>%n bande n’a pas été trouvée (en tirets) : placez-la.</numerusform>
                <numerusform>%n bandes n’ont pas été trouvées (en tirets) : placez-les.</numerusform>
            </translation>
        </message>
        <message>
            <source>Working out how well they agree…</source>
            <translation>Calcul de leur accord…</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>The noses agree to %1 (rms).</source>
            <translation>Les nez concordent à %1 près (efficace).</translation>
        </message>
        <message numerus="yes">
            <source>%n sight(s) agree to %1 (rms) along their rails; furthest off, by %2, lies %3.</source>
            <translation>
                <numerusform>%n mouche concorde à %1 près (efficace) le long du cadre ; la plus écartée, de %2 : %3.</numerusform>
                <numerusform>%n mouches concordent à %1 près (efficace) le long des cadres ; la plus écartée, de %2 : %3.</numerusform>
            </translation>
        </message>
        <message>
            <source>No sight was found; with them, places would be surer.</source>
            <translation>Aucune mouche n’a été trouvée ; avec elles, les positions seraient plus sûres.</translation>
        </message>
        <message>
            <source>&amp;Count it here</source>
            <translation>La compter &amp;ici</translation>
        </message>
        <message>
            <source>It is &amp;not there</source>
            <translation>&amp;N’y est pas</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesView</name>
        <message>
            <source>%1, place %2 of %3</source>
            <comment>a cushion</comment>
            <translation>%1, point %2 sur %3</translation>
        </message>
        <message>
            <source>The cushions' noses, the sights and the pockets in the film's picture</source>
            <translation>Les nez des bandes, les mouches et les poches dans l’image du film</translation>
        </message>
        <message>
            <source>found</source>
            <comment>a sight or pocket</comment>
            <translation>trouvée</translation>
        </message>
        <message>
            <source>placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>placée à la main</translation>
        </message>
        <message>
            <source>not there</source>
            <comment>a sight or pocket</comment>
            <translation>absente</translation>
        </message>
        <message>
            <source>not found</source>
            <comment>a sight or pocket</comment>
            <translation>non trouvée</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LivePage</name>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>&amp;Regarder dans Relecture</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>&amp;Autre séance</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MainWindow</name>
        <message>
            <source>&amp;Wide list of places</source>
            <translation>Liste &amp;large des rubriques</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>Liste étroite des ru&amp;briques</translation>
        </message>
        <message>
            <source>Se&amp;ttings</source>
            <translation>&amp;Réglages</translation>
        </message>
        <message>
            <source>Open a record</source>
            <translation>Ouvrir un carnet</translation>
        </message>
        <message>
            <source>Records (*.sqlite);;All files (*)</source>
            <translation>Carnets (*.sqlite);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Open &amp;again</source>
            <translation>&amp;Rouvrir</translation>
        </message>
        <message>
            <source>No record was opened yet</source>
            <translation>Aucun carnet n’a encore été ouvert</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Langue</translation>
        </message>
        <message>
            <source>Something is being measured. Choose the language when it is done.</source>
            <translation>Une mesure est en cours. Choisissez la langue quand elle sera finie.</translation>
        </message>
        <message>
            <source>Take in another record</source>
            <translation>Reprendre un autre carnet</translation>
        </message>
        <message>
            <source>Something is being measured. Take the record in when it is done.</source>
            <translation>Une mesure est en cours. Reprenez le carnet quand elle sera finie.</translation>
        </message>
        <message>
            <source>Taking in %1…</source>
            <translation>Reprise de %1…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MapPage</name>
        <message>
            <source>Comes from</source>
            <translation>Origine</translation>
        </message>
        <message>
            <source>Standard uncertainty</source>
            <translation>Incertitude-type</translation>
        </message>
        <message>
            <source>Where the uncertainty comes from, at the marked place</source>
            <translation>D’où vient l’incertitude, à l’endroit marqué</translation>
        </message>
        <message>
            <source>What it is worth in a shot</source>
            <translation>Ce que cela vaut dans un coup</translation>
        </message>
        <message>
            <source>&amp;Pocket</source>
            <translation>&amp;Poche</translation>
        </message>
        <message>
            <source>The object ball, toward the foot</source>
            <translation>La bille visée, vers le pied</translation>
        </message>
        <message>
            <source>The object ball, to the left</source>
            <translation>La bille visée, vers la gauche</translation>
        </message>
        <message>
            <source>Object ball &amp;x</source>
            <translation>Bille visée &amp;x</translation>
        </message>
        <message>
            <source>Object ball &amp;y</source>
            <translation>Bille visée &amp;y</translation>
        </message>
        <message>
            <source>Cut angle; less than 0: to the right</source>
            <translation>Angle de coupe ; moins de 0 : vers la droite</translation>
        </message>
        <message>
            <source>&amp;Cut</source>
            <translation>&amp;Coupe</translation>
        </message>
        <message>
            <source>How far the cue ball rolls before it meets the object ball</source>
            <translation>Distance que la blanche parcourt avant de toucher la bille visée</translation>
        </message>
        <message>
            <source>Cue ball a&amp;way</source>
            <translation>Distance de la &amp;blanche</translation>
        </message>
        <message>
            <source>Places that are off by so much</source>
            <translation>Positions décalées d’autant</translation>
        </message>
        <message>
            <source>If places were &amp;off by</source>
            <translation>Si les positions étaient &amp;décalées de</translation>
        </message>
        <message>
            <source>The camera does not see this place.</source>
            <translation>La caméra ne voit pas cet endroit.</translation>
        </message>
        <message>
            <source>There is no rig yet.</source>
            <translation>Il n’y a pas encore de calage.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>At x %1, y %2: within %3 (95 %)</source>
            <translation>En x %1, y %2 : à %3 près (95 %)</translation>
        </message>
        <message>
            <source>All together</source>
            <translation>Total</translation>
        </message>
        <message>
            <source>One of the balls would lie off the table; choose another place, cut or distance.</source>
            <translation>L’une des billes serait hors de la table ; choisissez un autre endroit, une autre coupe ou une autre distance.</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <comment>component, its share</comment>
            <translation>%1 %2 %</translation>
        </message>
        <message>
            <source>It comes from: %1. %2</source>
            <translation>Origine : %1. %2</translation>
        </message>
        <message>
            <source>With places so far off the cue ball may miss the object ball altogether.</source>
            <translation>Avec des positions aussi décalées, la blanche peut manquer complètement la bille visée.</translation>
        </message>
        <message>
            <source>A ball lies within so many millimetres of its place (95 %)</source>
            <translation>Écart maximal d’une bille à sa position, en millimètres (95 %)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasurePicture</name>
        <message>
            <source>Where to measure the table: from nose to nose, and both diagonals</source>
            <translation>Où mesurer la table : de nez à nez, et les deux diagonales</translation>
        </message>
        <message>
            <source>Where to measure the tags: their corners from the table's middle</source>
            <translation>Où mesurer les repères : leurs coins depuis le milieu de la table</translation>
        </message>
        <message>
            <source>length</source>
            <translation>longueur</translation>
        </message>
        <message>
            <source>width</source>
            <translation>largeur</translation>
        </message>
        <message>
            <source>diagonal A</source>
            <translation>diagonale A</translation>
        </message>
        <message>
            <source>diagonal B</source>
            <translation>diagonale B</translation>
        </message>
        <message>
            <source>head</source>
            <translation>tête</translation>
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
            <translation>milieu de la table</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuredShotList</name>
        <message>
            <source>Shots measured so far</source>
            <translation>Coups mesurés jusqu’ici</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuringPictures</name>
        <message>
            <source>Picture of the film with the balls that were found</source>
            <translation>Image du film avec les billes trouvées</translation>
        </message>
    </context>
    <context>
        <name>ferrule::NoteSection</name>
        <message>
            <source>Notes about this player</source>
            <translation>Notes sur ce joueur</translation>
        </message>
        <message>
            <source>A new note</source>
            <translation>Une nouvelle note</translation>
        </message>
        <message>
            <source>Who writes</source>
            <translation>Qui écrit</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>Votre nom</translation>
        </message>
        <message>
            <source>Stands beside notes and consents that you write down</source>
            <translation>Figure à côté des notes et consentements que vous écrivez</translation>
        </message>
        <message>
            <source>&amp;Written by</source>
            <translation>&amp;Écrit par</translation>
        </message>
        <message>
            <source>Add the note</source>
            <translation>Ajouter la note</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Retirer</translation>
        </message>
        <message>
            <source>Remove the chosen note</source>
            <translation>Retirer la note choisie</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PeopleDesk</name>
        <message>
            <source>add %1</source>
            <translation>ajouter %1</translation>
        </message>
        <message>
            <source>%1 has played meanwhile and stays.</source>
            <translation>%1 a joué entre-temps et reste.</translation>
        </message>
        <message>
            <source>change %1</source>
            <translation>modifier %1</translation>
        </message>
        <message>
            <source>rename %1 to %2</source>
            <translation>renommer %1 en %2</translation>
        </message>
        <message>
            <source>note consent of %1</source>
            <translation>noter le consentement de %1</translation>
        </message>
        <message>
            <source>withdraw consent of %1</source>
            <translation>retirer le consentement de %1</translation>
        </message>
        <message>
            <source>note about %1</source>
            <translation>note sur %1</translation>
        </message>
        <message>
            <source>remove a note about %1</source>
            <translation>retirer une note sur %1</translation>
        </message>
        <message>
            <source>make %1 and %2 one</source>
            <translation>réunir %1 et %2</translation>
        </message>
        <message>
            <source>%1 and %2 played in one session, "%3", so they are two people.</source>
            <translation>%1 et %2 ont joué dans une même séance, « %3 » : ce sont donc deux personnes.</translation>
        </message>
        <message>
            <source>%1 plays in the session that is under way; end it first.</source>
            <translation>%1 joue dans la séance en cours ; terminez-la d’abord.</translation>
        </message>
        <message>
            <source>%1 plays in a session that is under way; go on with it in Session and end it first.</source>
            <translation>%1 joue dans une séance en cours ; reprenez-la sous Séance et terminez-la d’abord.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PersonForm</name>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>Playing hand</source>
            <translation>Main de jeu</translation>
        </message>
        <message>
            <source>Playing &amp;hand</source>
            <translation>&amp;Main de jeu</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Groupes</translation>
        </message>
        <message>
            <source>Such as juniors, Tuesday</source>
            <translation>Par exemple juniors, mardi</translation>
        </message>
        <message>
            <source>With commas between; a person may be in several</source>
            <translation>Séparés par des virgules ; on peut être dans plusieurs</translation>
        </message>
        <message>
            <source>G&amp;roups</source>
            <translation>G&amp;roupes</translation>
        </message>
        <message>
            <source>&amp;Minor: a parent or guardian gives consent</source>
            <translation>M&amp;ineur : un parent ou tuteur consent</translation>
        </message>
        <message>
            <source>Minor</source>
            <translation>Mineur</translation>
        </message>
        <message>
            <source>G&amp;uest: who it is will be known later</source>
            <translation>In&amp;vité : on saura plus tard qui c’est</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>Invité</translation>
        </message>
        <message>
            <source>Who it is</source>
            <translation>Qui c’est</translation>
        </message>
        <message>
            <source>Give over</source>
            <translation>Attribuer</translation>
        </message>
        <message>
            <source>Give all shots to that player</source>
            <translation>Attribuer tous les coups à ce joueur</translation>
        </message>
        <message>
            <source>All shots, sessions, notes and consents go to that player; can be undone</source>
            <translation>Tous les coups, séances, notes et consentements vont à ce joueur ; peut être annulé</translation>
        </message>
        <message>
            <source>This &amp;is</source>
            <translation>C’e&amp;st</translation>
        </message>
        <message>
            <source>Same person &amp;as</source>
            <translation>Même per&amp;sonne que</translation>
        </message>
        <message>
            <source>Choose a player</source>
            <translation>Choisir un joueur</translation>
        </message>
        <message>
            <source>A player needs a name; the old one stays.</source>
            <translation>Un joueur a besoin d’un nom ; l’ancien reste.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlaceList</name>
        <message>
            <source>Places</source>
            <translation>Rubriques</translation>
        </message>
        <message>
            <source>Show words</source>
            <translation>Afficher les noms</translation>
        </message>
        <message>
            <source>Show icons only</source>
            <translation>Afficher seulement les icônes</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlanView</name>
        <message>
            <source>Plan of the table</source>
            <translation>Plan de la table</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlayersPlace</name>
        <message>
            <source>Players</source>
            <translation>Joueurs</translation>
        </message>
        <message>
            <source>Search for a player or group</source>
            <translation>Chercher un joueur ou un groupe</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Groupe</translation>
        </message>
        <message>
            <source>Players of the record</source>
            <translation>Joueurs du carnet</translation>
        </message>
        <message>
            <source>Nobody passes the search and the group.</source>
            <translation>Personne ne répond à la recherche et au groupe.</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>Personne</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Consentement</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notes</translation>
        </message>
        <message>
            <source>Choose a player on the left.</source>
            <translation>Choisissez un joueur à gauche.</translation>
        </message>
        <message>
            <source>Add a player</source>
            <translation>Ajouter un joueur</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>Invité</translation>
        </message>
        <message>
            <source>New player</source>
            <translation>Nouveau joueur</translation>
        </message>
        <message>
            <source>Nobody is in %1 yet. Add a player first: name, groups and consent; then sessions and films know them by name.</source>
            <translation>Il n’y a encore personne dans %1. Ajoutez d’abord un joueur : nom, groupes et consentement ; séances et films le connaîtront alors par son nom.</translation>
        </message>
        <message>
            <source>Every group</source>
            <translation>Tous les groupes</translation>
        </message>
        <message>
            <source>Export and erase</source>
            <translation>Exporter et effacer</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>Écrit : %1</translation>
        </message>
        <message>
            <source>Choose the player who is to be exported.</source>
            <translation>Choisissez le joueur à exporter.</translation>
        </message>
        <message>
            <source>Export the player to a folder</source>
            <translation>Exporter le joueur vers un dossier</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProgressPlace</name>
        <message>
            <source>Progress</source>
            <translation>Progression</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Graphiques</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>Personne n’a encore joué dans %1. Jouez une séance avec des noms, ou ouvrez un autre carnet.</translation>
        </message>
        <message>
            <source>Co&amp;mpare with</source>
            <translation>Co&amp;mparer avec</translation>
        </message>
        <message>
            <source>Show two players or two periods side by side</source>
            <translation>Montrer deux joueurs ou deux périodes côte à côte</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>À travailler</translation>
        </message>
        <message>
            <source>What the figures rest on</source>
            <translation>Sur quoi reposent les graphiques</translation>
        </message>
        <message>
            <source>What to work on and what the figures rest on</source>
            <translation>À travailler, et sur quoi reposent les graphiques</translation>
        </message>
        <message>
            <source>What is pointed at</source>
            <translation>Ce qui est pointé</translation>
        </message>
        <message>
            <source>Progress needs shots: play a session, or open a record.</source>
            <translation>Il faut des coups pour montrer la progression : jouez une séance, ou ouvrez un carnet.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Ouvrir un carnet…</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection. Choose a longer period.</source>
            <translation>Il n’y a aucun coup de ce joueur dans cette sélection. Choisissez une période plus longue.</translation>
        </message>
        <message>
            <source>Choose a chart first: click it, or go to it with the Tab key.</source>
            <translation>Choisissez d’abord un graphique : cliquez dessus, ou allez-y avec la touche Tab.</translation>
        </message>
        <message>
            <source>Export the chart</source>
            <translation>Exporter le graphique</translation>
        </message>
        <message>
            <source>chart.svg</source>
            <translation>graphique.svg</translation>
        </message>
        <message>
            <source>Pictures (*.svg *.png);;Numbers (*.csv)</source>
            <translation>Images (*.svg *.png);;Chiffres (*.csv)</translation>
        </message>
        <message>
            <source>The chart is in %1.</source>
            <translation>Le graphique est dans %1.</translation>
        </message>
        <message>
            <source>Reading the record…</source>
            <translation>Lecture du carnet…</translation>
        </message>
        <message>
            <source>Working it out…</source>
            <translation>Calcul en cours…</translation>
        </message>
        <message>
            <source>Point at a part of a chart for its numbers; click it for the shots behind it.</source>
            <translation>Pointez une partie d’un graphique pour ses chiffres ; cliquez pour voir les coups correspondants.</translation>
        </message>
        <message>
            <source>Choose a part of a chart first: click it, or go to it with the arrow keys.</source>
            <translation>Choisissez d’abord une partie d’un graphique : cliquez dessus, ou allez-y avec les touches fléchées.</translation>
        </message>
        <message>
            <source>There is no shot behind this.</source>
            <translation>Aucun coup ne correspond.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorDesk</name>
        <message>
            <source>The set-up in use has no projector; find where its light falls in Set-up, step Projector, and save the set-up.</source>
            <translation>L’installation utilisée n’a pas de projecteur ; trouvez où tombe sa lumière dans Installation, étape Projecteur, et enregistrez l’installation.</translation>
        </message>
        <message>
            <source>No screen beside the window's own has the %1 × %2 px that the projector was found with; connect it, or choose its screen in Set-up, step Projector, and find it anew.</source>
            <translation>Aucun écran autre que celui de la fenêtre n’a les %1 × %2 px avec lesquels le projecteur a été trouvé ; branchez-le, ou choisissez son écran dans Installation, étape Projecteur, et trouvez-le de nouveau.</translation>
        </message>
        <message>
            <source>Never look into the beam; B makes it black, Escape closes it.</source>
            <translation>Ne regardez jamais dans le faisceau ; B le rend noir, Échap le ferme.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorPage</name>
        <message>
            <source>Never look into the beam, and let nobody bend into it: black is one key away (B). The pictures change in slow fades and nothing blinks; if light that moves troubles somebody, leave it black. A projector over a table needs fixings rated for its weight, a steel tether to a second point, and mains work by a licensed electrician; local codes come first.</source>
            <translation>Ne regardez jamais dans le faisceau, et ne laissez personne s’y pencher : le noir est à une touche (B). Les images changent en fondus lents et rien ne clignote ; si une lumière qui bouge gêne quelqu’un, laissez au noir. Un projecteur au-dessus d’une table demande des fixations prévues pour son poids, une élingue d’acier à un second point et un branchement par un électricien agréé ; les règles locales priment.</translation>
        </message>
        <message>
            <source>&amp;Screen of the projector</source>
            <translation>É&amp;cran du projecteur</translation>
        </message>
        <message>
            <source>&amp;Black</source>
            <translation>&amp;Noir</translation>
        </message>
        <message>
            <source>&amp;Grid of tags</source>
            <translation>&amp;Grille de repères</translation>
        </message>
        <message>
            <source>&amp;Lines and spots of the table</source>
            <translation>&amp;Lignes et mouches de la table</translation>
        </message>
        <message>
            <source>Clear the table, darken the room, show the grid and take a still of it with the camera of this rig, in its own picture size.</source>
            <translation>Débarrassez la table, assombrissez la salle, affichez la grille et prenez-en une photo avec la caméra de ce calage, à sa propre taille d’image.</translation>
        </message>
        <message>
            <source>&amp;Find the projector in a still…</source>
            <translation>&amp;Trouver le projecteur sur une photo…</translation>
        </message>
        <message>
            <source>A still of the grid on the cloth</source>
            <translation>Une photo de la grille sur le tapis</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg);;All files (*)</source>
            <translation>Images (*.png *.jpg *.jpeg);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>%1: %2 × %3 px</source>
            <comment>a screen</comment>
            <translation>%1 : %2 × %3 px</translation>
        </message>
        <message>
            <source>It is not known yet where the projector's light falls; show the grid and find it in a still.</source>
            <translation>On ne sait pas encore où tombe la lumière du projecteur ; affichez la grille et trouvez-la sur une photo.</translation>
        </message>
        <message>
            <source>The projector was found with a picture of %1 × %2 px and this screen has %3 × %4 px; choose its screen, or show the grid again and find it anew.</source>
            <translation>Le projecteur a été trouvé avec une image de %1 × %2 px et cet écran fait %3 × %4 px ; choisissez son écran, ou affichez de nouveau la grille et retrouvez-le.</translation>
        </message>
        <message>
            <source>No projector yet; without one this step is not needed.</source>
            <translation>Pas encore de projecteur ; sans projecteur, cette étape est inutile.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Light lies true to %1 (rms) on the cloth, by tags that had no part in it (%2 tags, %3 × %4 px, %5).</source>
            <translation>La lumière tombe juste à %1 près (rms) sur le tapis, d’après des repères qui n’ont pas servi au calcul (%2 repères, %3 × %4 px, %5).</translation>
        </message>
        <message>
            <source>&amp;Close its screen</source>
            <translation>Fer&amp;mer son écran</translation>
        </message>
        <message>
            <source>A &amp;position file…</source>
            <translation>Un fichier de &amp;position…</translation>
        </message>
        <message>
            <source>A position file</source>
            <translation>Un fichier de position</translation>
        </message>
        <message>
            <source>Positions (*.json);;All files (*)</source>
            <translation>Positions (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>grid of tags</source>
            <translation>grille de repères</translation>
        </message>
        <message>
            <source>lines and spots</source>
            <translation>lignes et mouches</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorScreen</name>
        <message>
            <source>Projector</source>
            <translation>Projecteur</translation>
        </message>
        <message>
            <source>The projector's picture; Escape closes it, B makes it black</source>
            <translation>L’image du projecteur ; Échap la ferme, B la met au noir</translation>
        </message>
    </context>
    <context>
        <name>ferrule::QuestionPanel</name>
        <message>
            <source>What does %1 choose?</source>
            <comment>a player</comment>
            <translation>Que choisit %1 ?</translation>
        </message>
        <message>
            <source>Shot %1: %2</source>
            <comment>number, a question</comment>
            <translation>Coup %1 : %2</translation>
        </message>
        <message numerus="yes">
            <source>%n more shot(s) wait for an answer.</source>
            <translation>
                <numerusform>%n autre coup attend une réponse.</numerusform>
                <numerusform>%n autres coups attendent une réponse.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::RemarksSection</name>
        <message>
            <source>Add a tag</source>
            <translation>Ajouter une étiquette</translation>
        </message>
        <message>
            <source>Notes on the shot; Delete takes one away</source>
            <translation>Notes sur le coup ; Suppr en retire une</translation>
        </message>
        <message>
            <source>Take the note away</source>
            <translation>Retirer la note</translation>
        </message>
        <message>
            <source>Write a note</source>
            <translation>Écrire une note</translation>
        </message>
        <message>
            <source>Who writes and corrects</source>
            <translation>Qui écrit et corrige</translation>
        </message>
        <message>
            <source>Take the tag away: %1</source>
            <translation>Retirer l’étiquette : %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Par</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReportsPlace</name>
        <message>
            <source>Reports</source>
            <translation>Bilans</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>Personne n’a encore joué dans %1. Jouez une séance avec des noms, ou ouvrez un autre carnet.</translation>
        </message>
        <message>
            <source>The student's language</source>
            <translation>Langue de l’élève</translation>
        </message>
        <message>
            <source>The student's &amp;language</source>
            <translation>&amp;Langue de l’élève</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
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
            <source>Pa&amp;per</source>
            <translation>&amp;Papier</translation>
        </message>
        <message>
            <source>Coach's note</source>
            <translation>Note de l’entraîneur</translation>
        </message>
        <message>
            <source>Empty: lines to write on</source>
            <translation>Vide : des lignes pour écrire</translation>
        </message>
        <message>
            <source>Coach's &amp;note</source>
            <translation>&amp;Note de l’entraîneur</translation>
        </message>
        <message>
            <source>As PDF or HTML to hand out, or its numbers as CSV.</source>
            <translation>En PDF ou HTML à remettre, ou ses chiffres en CSV.</translation>
        </message>
        <message>
            <source>A report needs shots: play a session, or open a record.</source>
            <translation>Il faut des coups pour faire un bilan : jouez une séance, ou ouvrez un carnet.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Ouvrir un carnet…</translation>
        </message>
        <message>
            <source>There is no report yet.</source>
            <translation>Il n’y a pas encore de bilan.</translation>
        </message>
        <message>
            <source>report-%1.pdf</source>
            <translation>bilan-%1.pdf</translation>
        </message>
        <message>
            <source>Export the report</source>
            <translation>Exporter le bilan</translation>
        </message>
        <message>
            <source>PDF (*.pdf);;HTML (*.html);;Numbers (*.csv)</source>
            <translation>PDF (*.pdf);;HTML (*.html);;Chiffres (*.csv)</translation>
        </message>
        <message>
            <source>%1 ends in none of .pdf, .html and .csv; name the file so that it does.</source>
            <translation>%1 ne se termine ni par .pdf, ni par .html, ni par .csv ; nommez le fichier ainsi.</translation>
        </message>
        <message>
            <source>The report is in %1.</source>
            <translation>Le bilan est dans %1.</translation>
        </message>
        <message>
            <source>No installed font has these letters, so they print as boxes: %1.</source>
            <translation>Aucune police installée n’a ces caractères, ils s’impriment donc comme des carrés : %1.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReviewPlace</name>
        <message>
            <source>Review</source>
            <translation>Relecture</translation>
        </message>
        <message>
            <source>Sessions, frames and shots</source>
            <translation>Séances, parties et coups</translation>
        </message>
        <message>
            <source>Find the film…</source>
            <translation>Trouver le film…</translation>
        </message>
        <message>
            <source>Open a record to look at its shots.</source>
            <translation>Ouvrez un carnet pour revoir ses coups.</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>Ouvrir un carnet…</translation>
        </message>
        <message>
            <source>Look at the demo</source>
            <translation>Voir la démo</translation>
        </message>
        <message>
            <source>Filter the shots first; the list is then played from the chosen shot on.</source>
            <translation>Filtrez d’abord les coups ; la liste est ensuite lue à partir du coup choisi.</translation>
        </message>
        <message>
            <source>%1 holds no session yet.</source>
            <translation>%1 ne contient encore aucune séance.</translation>
        </message>
        <message>
            <source>Choose a shot to see its film.</source>
            <translation>Choisissez un coup pour voir son film.</translation>
        </message>
        <message>
            <source>This frame was put in by hand: it has no film. The plan shows it.</source>
            <translation>Cette partie a été saisie à la main : elle n’a pas de film. Le plan la montre.</translation>
        </message>
        <message>
            <source>%1 The plan still shows what was measured.</source>
            <translation>%1 Le plan montre toujours ce qui a été mesuré.</translation>
        </message>
        <message>
            <source>Reading the film…</source>
            <translation>Lecture du film…</translation>
        </message>
        <message>
            <source>Where is %1?</source>
            <translation>Où est %1 ?</translation>
        </message>
        <message>
            <source>Films (%1);;All files (*)</source>
            <translation>Films (%1);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>Entraîneur</translation>
        </message>
        <message>
            <source>Changed: %1 of shot %2. Undo takes it back.</source>
            <translation>Changé : %1 du coup %2. Annuler le retire.</translation>
        </message>
        <message>
            <source>shot-%1.png</source>
            <translation>coup-%1.png</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <translation>Enregistrer l’image</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg)</source>
            <translation>Images (*.png *.svg)</translation>
        </message>
        <message>
            <source>The picture is in %1.</source>
            <translation>L’image est dans %1.</translation>
        </message>
        <message>
            <source>A ball cannot be taken away here; correct the result when it fell.</source>
            <translation>On ne peut pas retirer une bille ici ; corrigez le résultat si elle est tombée.</translation>
        </message>
        <message>
            <source>Drag a ball to where it lay before the shot, or choose it with the tab key and move it with the arrow keys. D goes on to where the balls came to rest.</source>
            <translation>Faites glisser une bille là où elle était avant le coup, ou choisissez-la avec la touche de tabulation et déplacez-la avec les flèches. D passe aux places après le coup.</translation>
        </message>
        <message>
            <source>Drag a ball to where it came to rest. D ends.</source>
            <translation>Faites glisser une bille là où elle s’est arrêtée. D termine.</translation>
        </message>
        <message>
            <source>This frame was measured live: nobody kept its film. The plan shows it.</source>
            <translation>Cette partie a été mesurée en direct : personne n’a gardé son film. Le plan la montre.</translation>
        </message>
        <message>
            <source>No guardian's consent to films that are handed on is noted for: %1.</source>
            <translation>Aucun accord d’un parent ou tuteur pour la transmission de films n’est noté pour : %1.</translation>
        </message>
        <message>
            <source>No consent to films that are handed on is noted for: %1.</source>
            <translation>Aucun accord pour la transmission de films n’est noté pour : %1.</translation>
        </message>
        <message>
            <source>Note it in Players, or save the plan as a clip: it shows nobody.</source>
            <translation>Notez-le dans Joueurs, ou enregistrez le plan en clip : il ne montre personne.</translation>
        </message>
        <message numerus="yes">
            <source>The clip is in %1 (%n image(s)).</source>
            <translation>
                <numerusform>Le clip est dans %1 (%n image).</numerusform>
                <numerusform>Le clip est dans %1 (%n images).</numerusform>
            </translation>
        </message>
        <message>
            <source>Film with the ways drawn over it (*.mp4 *.avi)</source>
            <translation>Film avec les trajets dessinés (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Film alone (*.mp4 *.avi)</source>
            <translation>Film seul (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Plan of the table (*.mp4 *.avi)</source>
            <translation>Plan de la table (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Save a clip</source>
            <translation>Enregistrer un clip</translation>
        </message>
        <message>
            <source>shot-%1.mp4</source>
            <translation>coup-%1.mp4</translation>
        </message>
        <message>
            <source>Shot %1 is held: choose another one to see both side by side. Q ends it.</source>
            <translation>Le coup %1 est gardé : choisissez-en un autre pour voir les deux côte à côte. Q pour terminer.</translation>
        </message>
        <message>
            <source>Taken back: a change of shot %1.</source>
            <translation>Annulé : une modification du coup %1.</translation>
        </message>
        <message numerus="yes">
            <source>Suggestions worked out anew: %n shot(s).</source>
            <translation>
                <numerusform>Suggestions recalculées : %n coup.</numerusform>
                <numerusform>Suggestions recalculées : %n coups.</numerusform>
            </translation>
        </message>
        <message>
            <source>Films are played without sound.</source>
            <translation>Les films sont lus sans le son.</translation>
        </message>
        <message>
            <source>Films are played with sound.</source>
            <translation>Les films sont lus avec le son.</translation>
        </message>
        <message>
            <source>Suggestions are worked out anew from what was corrected.</source>
            <translation>Les suggestions sont recalculées d’après la correction.</translation>
        </message>
        <message>
            <source>The clip is written.</source>
            <translation>Le clip est en cours d’écriture.</translation>
        </message>
        <message>
            <source>Pictures (*.png)</source>
            <translation>Images (*.png)</translation>
        </message>
        <message>
            <source>Measure the demo film</source>
            <translation>Mesurer le film de démonstration</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigChoice</name>
        <message>
            <source>Rig</source>
            <translation>Calage</translation>
        </message>
        <message>
            <source>Choose a rig file</source>
            <translation>Choisir un fichier de calage</translation>
        </message>
        <message>
            <source>Rig files (*.json);;All files (*)</source>
            <translation>Calages (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>rig.json, from Set-up or calibrate rig</source>
            <translation>rig.json, de l’installation ou de calibrate rig</translation>
        </message>
        <message>
            <source>Choose a table file</source>
            <translation>Choisir un fichier de table</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>Fichiers de table (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>table.json, or a usual size such as 9ft</source>
            <translation>table.json, ou une taille usuelle telle que 9ft</translation>
        </message>
        <message>
            <source>There is no rig yet. It tells where the camera sits over the table; Set-up makes one from a film or still.</source>
            <translation>Il n’y a pas encore de calage. Il dit où la caméra se trouve au-dessus de la table ; l’installation le fait d’après un film ou une photo.</translation>
        </message>
        <message>
            <source>Make one in Set-&amp;up</source>
            <translation>En faire un dans l’&amp;installation</translation>
        </message>
        <message>
            <source>Other files…</source>
            <translation>Autres fichiers…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigPage</name>
        <message>
            <source>&amp;Make the rig</source>
            <translation>&amp;Faire le calage</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Repère</translation>
        </message>
        <message>
            <source>Off in the picture</source>
            <translation>Écart dans l’image</translation>
        </message>
        <message>
            <source>Off on its rail</source>
            <translation>Écart sur le cadre</translation>
        </message>
        <message>
            <source>Found by the others</source>
            <translation>Trouvé par les autres</translation>
        </message>
        <message>
            <source>How well each tag agrees</source>
            <translation>Concordance de chaque repère</translation>
        </message>
        <message>
            <source>Cushion</source>
            <translation>Bande</translation>
        </message>
        <message>
            <source>Straight to (rms)</source>
            <translation>Droite à (rms)</translation>
        </message>
        <message>
            <source>At most</source>
            <translation>Au plus</translation>
        </message>
        <message>
            <source>How straight each cushion's nose comes out</source>
            <translation>Rectitude obtenue du nez de chaque bande</translation>
        </message>
        <message>
            <source>no film yet</source>
            <translation>pas encore de film</translation>
        </message>
        <message>
            <source>the lens from the cushions</source>
            <translation>l’objectif tiré des bandes</translation>
        </message>
        <message>
            <source>no lens yet</source>
            <translation>pas encore d’objectif</translation>
        </message>
        <message>
            <source>From %1, with %2 and the tags on the rails.</source>
            <translation>Sources : %1, %2 et les repères sur le cadre.</translation>
        </message>
        <message>
            <source>No rig yet.</source>
            <translation>Pas encore de calage.</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 toward the foot</source>
            <translation>%1 vers le pied</translation>
        </message>
        <message>
            <source>%1 toward the head</source>
            <translation>%1 vers la tête</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>%1 vers la gauche</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>%1 vers la droite</translation>
        </message>
        <message>
            <source>The camera sits %1 above the cloth, %2 and %3 of the table's middle.</source>
            <translation>La caméra se trouve à %1 au-dessus du tapis, %2 et %3 par rapport au milieu de la table.</translation>
        </message>
        <message>
            <source>The cushions come out bent by up to %1: the lens belongs to another camera, or the film was corrected before. Calibrate the lens of this camera.</source>
            <translation>Les bandes apparaissent courbées jusqu’à %1 : l’objectif est celui d’une autre caméra, ou le film a déjà été corrigé. Étalonnez l’objectif de cette caméra.</translation>
        </message>
        <message>
            <source>The cushions come out straight but the tags disagree by %1: measure their places and heights again.</source>
            <translation>Les bandes apparaissent droites mais les repères divergent de %1 : mesurez de nouveau leurs positions et leurs hauteurs.</translation>
        </message>
        <message>
            <source>Camera and cushions agree.</source>
            <translation>La caméra et les bandes concordent.</translation>
        </message>
        <message>
            <source>The tags agree to %1 (%2 px).</source>
            <translation>Les repères concordent à %1 près (%2 px).</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>A ball lies within %1 of its place at the middle and within %2 near a corner (95 %).</source>
            <translation>Une bille se trouve à %1 au plus de sa position au milieu, et à %2 au plus près d’un coin (95 %).</translation>
        </message>
        <message>
            <source>Four tags and a lens from a board bring this to about 1 mm: some %1 less in the corner.</source>
            <translation>Quatre repères et un objectif étalonné sur une mire ramènent cela à environ 1 mm : quelque %1 de moins dans le coin.</translation>
        </message>
        <message>
            <source>From %1, with %2, the cushions and the sights.</source>
            <translation>Sources : %1, %2, les bandes et les mouches.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RunPanel</name>
        <message>
            <source>Tries of this run</source>
            <translation>Essais de cette série</translation>
        </message>
        <message>
            <source>Met, missed, or not said; a place put in for the cue ball decides what it can</source>
            <translation>Atteint, manqué ou non dit ; une place donnée à la blanche décide ce qu’elle peut</translation>
        </message>
        <message>
            <source>Try %1 of %2</source>
            <translation>Essai %1 sur %2</translation>
        </message>
        <message>
            <source>set-up %1</source>
            <translation>position %1</translation>
        </message>
        <message>
            <source>Met in full: %1</source>
            <translation>Entièrement atteint : %1</translation>
        </message>
        <message>
            <source>Missed thick %1, thin %2</source>
            <translation>Trop plein %1, trop fin %2</translation>
        </message>
        <message>
            <source>not all known</source>
            <translation>pas tout connu</translation>
        </message>
        <message>
            <source>met</source>
            <translation>atteint</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>manqué</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionLight</name>
        <message>
            <source>Project the suggestion</source>
            <translation>Projeter la suggestion</translation>
        </message>
        <message>
            <source>Show the suggested shot on the cloth: its line, and where the cue ball is to rest</source>
            <translation>Montrer sur le tapis le coup suggéré : sa ligne, et où la blanche doit s’arrêter</translation>
        </message>
        <message>
            <source>Project where balls belong</source>
            <translation>Projeter la place des billes</translation>
        </message>
        <message>
            <source>After an interruption: show where balls must be put back</source>
            <translation>Après une interruption : montrer où les billes doivent être remises</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>a ball</comment>
            <translation>non vue</translation>
        </message>
        <message>
            <source>Every ball lies where it belongs.</source>
            <translation>Chaque bille est à sa place.</translation>
        </message>
        <message>
            <source>To be put back: %1.</source>
            <comment>balls</comment>
            <translation>À remettre en place : %1.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionPlace</name>
        <message>
            <source>Session</source>
            <translation>Séance</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) now stand beside what would have been suggested: see Review.</source>
            <translation>
                <numerusform>%n coup est désormais comparé à ce qui aurait été suggéré : voir Relecture.</numerusform>
                <numerusform>%n coups sont désormais comparés à ce qui aurait été suggéré : voir Relecture.</numerusform>
            </translation>
        </message>
        <message>
            <source>Shots of this frame</source>
            <translation>Coups de cette partie</translation>
        </message>
        <message>
            <source>Choose the ball that was made and its pocket first.</source>
            <translation>Choisissez d’abord la bille empochée et sa poche.</translation>
        </message>
        <message>
            <source>%1, frame %2</source>
            <translation>%1, partie %2</translation>
        </message>
        <message>
            <source>A session is under way: end it before another film is measured.</source>
            <translation>Une séance est en cours : terminez-la avant de mesurer un autre film.</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) stand where the photo shows them. One look is not sure of the names: check them.</source>
            <translation>
                <numerusform>%n bille est là où la photo la montre. Un seul regard n’est pas sûr des numéros : vérifiez-les.</numerusform>
                <numerusform>%n billes sont là où la photo les montre. Un seul regard n’est pas sûr des numéros : vérifiez-les.</numerusform>
            </translation>
        </message>
        <message>
            <source>A photo of the table</source>
            <translation>Une photo de la table</translation>
        </message>
        <message>
            <source>Pictures (*.jpg *.jpeg *.png);;All files (*)</source>
            <translation>Images (*.jpg *.jpeg *.png);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>A photo needs the rig of the camera that took it: make one in Set-up first.</source>
            <translation>Une photo a besoin du calage de la caméra qui l’a prise : faites-le d’abord dans Installation.</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>Recherche des billes…</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>Entraîneur</translation>
        </message>
        <message>
            <source>Put the shot in first; then choose the ball that fell with it, and its pocket.</source>
            <translation>Inscrivez d’abord le coup ; choisissez ensuite la bille qui est aussi tombée, et sa poche.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetUpSection</name>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>Choisissez d’abord une caméra, ou le film qui la remplace.</translation>
        </message>
        <message>
            <source>The camera needs its rig to see where balls lie: make one in Set-up first.</source>
            <translation>La caméra a besoin de son calage pour voir où sont les billes : faites-le d’abord dans Installation.</translation>
        </message>
        <message>
            <source>Stop looking</source>
            <translation>Ne plus regarder</translation>
        </message>
        <message>
            <source>Check the set-up</source>
            <translation>Vérifier la position</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>Recherche des billes…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupDesk</name>
        <message>
            <source>There is no rig yet; make one in the step Rig.</source>
            <translation>Il n’y a pas encore de calage ; faites-en un à l’étape Calage.</translation>
        </message>
        <message>
            <source>What was kept of a set-up in %1 cannot be read; it begins anew.</source>
            <translation>Ce qui avait été gardé d’une installation dans %1 est illisible ; elle recommence à zéro.</translation>
        </message>
        <message>
            <source>There are no stills yet; add pictures of the board.</source>
            <translation>Il n’y a pas encore de photos ; ajoutez des photos de la mire.</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>Il n’y a pas encore de film de la table ; choisissez-en un à l’étape Caméra.</translation>
        </message>
        <message>
            <source>There is no lens yet; calibrate it, or set up from the table itself without tags.</source>
            <translation>Il n’y a pas encore d’objectif ; étalonnez-le, ou faites le calage d’après la table elle-même, sans repères.</translation>
        </message>
        <message>
            <source>No rig is in use yet; go through the steps once.</source>
            <translation>Aucun calage n’est encore utilisé ; suivez les étapes une fois.</translation>
        </message>
        <message>
            <source>The set-up is saved in %1 and is the one in use.</source>
            <translation>L’installation est enregistrée dans %1 et c’est celle qui est utilisée.</translation>
        </message>
        <message>
            <source>Something was changed meanwhile, so what came out no longer holds; make it again.</source>
            <translation>Quelque chose a changé entre-temps, le résultat n’est donc plus valable ; refaites-le.</translation>
        </message>
        <message>
            <source>Work goes on; stop it, or let it end, before a step is undone.</source>
            <translation>Un travail est en cours ; arrêtez-le ou laissez-le finir avant d’annuler une étape.</translation>
        </message>
        <message>
            <source>start a new set-up</source>
            <translation>nouvelle installation commencée</translation>
        </message>
        <message>
            <source>the table file</source>
            <translation>fichier de la table</translation>
        </message>
        <message>
            <source>the lens file</source>
            <translation>fichier d’objectif</translation>
        </message>
        <message>
            <source>the set-up in use opened</source>
            <translation>installation utilisée ouverte</translation>
        </message>
        <message>
            <source>the film</source>
            <translation>film</translation>
        </message>
        <message>
            <source>stills added</source>
            <translation>photos ajoutées</translation>
        </message>
        <message>
            <source>stills removed</source>
            <translation>photos retirées</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>objectif</translation>
        </message>
        <message>
            <source>the projector</source>
            <translation>projecteur</translation>
        </message>
        <message>
            <source>a still taken</source>
            <translation>une photo prise</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupPlace</name>
        <message>
            <source>Set-up</source>
            <translation>Installation</translation>
        </message>
        <message>
            <source>New set-up</source>
            <translation>Nouvelle installation</translation>
        </message>
        <message>
            <source>%1 ✓</source>
            <comment>a step that is done</comment>
            <translation>%1 ✓</translation>
        </message>
        <message>
            <source>%1, done</source>
            <comment>a step</comment>
            <translation>%1, fait</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SheetsView</name>
        <message>
            <source>Preview</source>
            <translation>Aperçu</translation>
        </message>
        <message>
            <source>Sheet %1 of %2</source>
            <translation>Feuille %1 sur %2</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotFilter</name>
        <message>
            <source>Missed pots</source>
            <translation>Tentatives manquées</translation>
        </message>
        <message>
            <source>Made, but position lost</source>
            <translation>Réussis, mais placement perdu</translation>
        </message>
        <message>
            <source>Another shot was better</source>
            <translation>Un autre coup valait mieux</translation>
        </message>
        <message>
            <source>Dearest choice of a frame not won</source>
            <translation>Choix le plus coûteux d’une partie non gagnée</translation>
        </message>
        <message>
            <source>Fouls</source>
            <translation>Fautes</translation>
        </message>
        <message>
            <source>Safeties</source>
            <translation>Défenses</translation>
        </message>
        <message>
            <source>Breaks</source>
            <translation>Casses</translation>
        </message>
        <message>
            <source>Player</source>
            <translation>Joueur</translation>
        </message>
        <message>
            <source>Everybody</source>
            <translation>Tous</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>&amp;Joueur</translation>
        </message>
        <message>
            <source>Which shots</source>
            <translation>Quels coups</translation>
        </message>
        <message>
            <source>All shots</source>
            <translation>Tous les coups</translation>
        </message>
        <message>
            <source>Sho&amp;ts</source>
            <translation>Cou&amp;ps</translation>
        </message>
        <message>
            <source>Miss side</source>
            <translation>Côté de l’erreur</translation>
        </message>
        <message>
            <source>Thick or thin</source>
            <translation>Plein ou fin</translation>
        </message>
        <message>
            <source>Too thick</source>
            <translation>Trop plein</translation>
        </message>
        <message>
            <source>Too thin</source>
            <translation>Trop fin</translation>
        </message>
        <message>
            <source>Mi&amp;ss side</source>
            <translation>Côté de l’e&amp;rreur</translation>
        </message>
        <message>
            <source>C&amp;ut</source>
            <translation>&amp;Coupe</translation>
        </message>
        <message>
            <source>Least cut</source>
            <translation>Coupe minimale</translation>
        </message>
        <message>
            <source>Most cut</source>
            <translation>Coupe maximale</translation>
        </message>
        <message>
            <source>Sp&amp;eed</source>
            <translation>&amp;Vitesse</translation>
        </message>
        <message>
            <source> m/s</source>
            <translation> m/s</translation>
        </message>
        <message>
            <source>Least speed</source>
            <translation>Vitesse minimale</translation>
        </message>
        <message>
            <source>Most speed</source>
            <translation>Vitesse maximale</translation>
        </message>
        <message>
            <source>Longest pot</source>
            <translation>Tentative la plus longue</translation>
        </message>
        <message>
            <source>Way of the cue ball times way of the object ball, in diamonds: of straight pots, 2 is short and 12 long</source>
            <translation>Trajet de la blanche fois trajet de la bille visée, en diamants : pour des billes en ligne, 2 est court et 12 est long</translation>
        </message>
        <message>
            <source>&amp;Longest</source>
            <translation>Plus &amp;longue</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>Poche</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>Toutes les poches</translation>
        </message>
        <message>
            <source>P&amp;ocket</source>
            <translation>P&amp;oche</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>Jeu</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>Tous les jeux</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>J&amp;eu</translation>
        </message>
        <message>
            <source>S&amp;ince</source>
            <translation>Dep&amp;uis</translation>
        </message>
        <message>
            <source>Only since a day</source>
            <translation>Seulement depuis un jour donné</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Premier jour</translation>
        </message>
        <message>
            <source>All sessions</source>
            <translation>Toutes les séances</translation>
        </message>
        <message>
            <source>Back to all sessions</source>
            <translation>Revenir à toutes les séances</translation>
        </message>
        <message>
            <source>Shots that were asked for</source>
            <translation>Coups recherchés</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Étiquette</translation>
        </message>
        <message>
            <source>With or without a tag</source>
            <translation>Avec ou sans étiquette</translation>
        </message>
        <message>
            <source>T&amp;ag</source>
            <translation>É&amp;tiquette</translation>
        </message>
        <message>
            <source>Made, but on the wrong side of the next ball</source>
            <translation>Réussis, mais du mauvais côté de la bille suivante</translation>
        </message>
        <message>
            <source>Corrected by a person</source>
            <translation>Corrigés par une personne</translation>
        </message>
        <message>
            <source>Not sure: please check</source>
            <translation>Pas sûrs : à vérifier</translation>
        </message>
        <message>
            <source>Put in by hand, or not followed</source>
            <translation>Saisis à la main ou non suivis</translation>
        </message>
        <message>
            <source>Side of the cut</source>
            <translation>Côté de la coupe</translation>
        </message>
        <message>
            <source>Cut to the left or right</source>
            <translation>Coupes des deux côtés</translation>
        </message>
        <message>
            <source>Cut to the left</source>
            <translation>Coupe à gauche</translation>
        </message>
        <message>
            <source>Cut to the right</source>
            <translation>Coupe à droite</translation>
        </message>
        <message>
            <source>Cut si&amp;de</source>
            <translation>Côté &amp;de coupe</translation>
        </message>
        <message>
            <source>Occasion</source>
            <translation>Occasion</translation>
        </message>
        <message>
            <source>Practice, match or lesson</source>
            <translation>Toute occasion</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Entraînement</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>Match</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>Cours</translation>
        </message>
        <message>
            <source>Occasio&amp;n</source>
            <translation>Occa&amp;sion</translation>
        </message>
        <message>
            <source>Minutes into the session</source>
            <translation>Minutes depuis le début de la séance</translation>
        </message>
        <message>
            <source>From the first shot</source>
            <translation>Dès le premier coup</translation>
        </message>
        <message>
            <source> min on</source>
            <translation> min</translation>
        </message>
        <message>
            <source>F&amp;rom</source>
            <translation>À p&amp;artir de</translation>
        </message>
        <message>
            <source>Until</source>
            <translation>Jusqu’au</translation>
        </message>
        <message>
            <source>Only until a day</source>
            <translation>Seulement jusqu’à un jour</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Dernier jour</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>Conditions</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Table</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>Toutes les tables</translation>
        </message>
        <message>
            <source>Ta&amp;ble</source>
            <translation>Ta&amp;ble</translation>
        </message>
        <message>
            <source>Who else played</source>
            <translation>Qui jouait aussi</translation>
        </message>
        <message>
            <source>Whoever else played</source>
            <translation>Avec n’importe qui</translation>
        </message>
        <message>
            <source>&amp;With</source>
            <translation>&amp;Face à</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln coup</numerusform>
                <numerusform>%Ln coups</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotPanel</name>
        <message>
            <source>Details of the shot</source>
            <translation>Détails du coup</translation>
        </message>
        <message>
            <source>Where everything rested</source>
            <translation>Où tout s’est arrêté</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Résultat</translation>
        </message>
        <message>
            <source>Ruling</source>
            <translation>Décision</translation>
        </message>
        <message>
            <source>Choose a shot to read what was struck and what happened.</source>
            <translation>Choisissez un coup pour lire comment il a été frappé et ce qui s’est passé.</translation>
        </message>
        <message>
            <source>What was struck</source>
            <translation>Comment il a été frappé</translation>
        </message>
        <message>
            <source>not observable: %1</source>
            <translation>non observable : %1</translation>
        </message>
        <message>
            <source>Only one direction of the offset can be seen: the band holds the tip point.</source>
            <translation>On ne voit qu’une direction du décentrage : le point d’attaque est dans la zone.</translation>
        </message>
        <message>
            <source>Dotted ring: miscue limit.</source>
            <translation>Cercle en pointillés : limite de fausse queue.</translation>
        </message>
        <message>
            <source>± one standard uncertainty. R: ball radius, + right and above.</source>
            <translation>± une incertitude-type. R : rayon de la bille, + à droite et en haut.</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Ce qui s’est passé</translation>
        </message>
        <message>
            <source>First contact: %1</source>
            <translation>Premier contact : %1</translation>
        </message>
        <message>
            <source>The cue ball met no ball.</source>
            <translation>La blanche n’a touché aucune bille.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1, poche %2</translation>
        </message>
        <message>
            <source>Nothing fell.</source>
            <translation>Rien n’est tombé.</translation>
        </message>
        <message>
            <source>Fell: %1</source>
            <translation>Tombé : %1</translation>
        </message>
        <message>
            <source>Events of the shot, seconds after the strike</source>
            <translation>Événements du coup, en secondes après la frappe</translation>
        </message>
        <message>
            <source>Why it missed</source>
            <translation>Pourquoi le coup est manqué</translation>
        </message>
        <message>
            <source>Turn of the object ball's line, + to the left seen along the shot.</source>
            <translation>Rotation de la ligne de la bille visée, + vers la gauche dans le sens du coup.</translation>
        </message>
        <message>
            <source>Suggested and taken</source>
            <translation>Suggéré et joué</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>column</comment>
            <translation>suggéré</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>column</comment>
            <translation>joué</translation>
        </message>
        <message>
            <source>* Corrected by a person: %1</source>
            <translation>* Corrigé par une personne : %1</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>Corrections</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>Retirer</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>Retirer : %1</translation>
        </message>
        <message>
            <source>The cue before the strike</source>
            <translation>La queue avant la frappe</translation>
        </message>
        <message>
            <source>The camera moved by %1 mm while this shot was played: its places are doubtful.</source>
            <translation>La caméra a bougé de %1 mm pendant ce coup : ses positions sont douteuses.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotTreeModel</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n coup</numerusform>
                <numerusform>%n coups</numerusform>
            </translation>
        </message>
        <message>
            <source>Frame %1</source>
            <translation>Partie %1</translation>
        </message>
        <message>
            <source>Still running, or its film was not read to the end.</source>
            <translation>Encore en cours, ou son film n’a pas été lu jusqu’au bout.</translation>
        </message>
        <message>
            <source>–</source>
            <comment>speed not observable</comment>
            <translation>–</translation>
        </message>
        <message>
            <source>Shot %1, %2, %3</source>
            <translation>Coup %1, %2, %3</translation>
        </message>
        <message>
            <source>Shot</source>
            <translation>Coup</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>Résultat</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>Vitesse</translation>
        </message>
        <message>
            <source>corrected by a person</source>
            <translation>corrigé par une personne</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StartForm</name>
        <message>
            <source>A session without a camera</source>
            <translation>Une séance sans caméra</translation>
        </message>
        <message>
            <source>Put the balls down, say what was played and what happened; the referee keeps turn and score.</source>
            <translation>Posez les billes, dites ce qui a été joué et ce qui s’est passé ; l’arbitre tient le tour et le score.</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>No game: practice without a referee</source>
            <translation>Aucun jeu : entraînement sans arbitre</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>Je&amp;u</translation>
        </message>
        <message>
            <source>One or two names with a comma; who breaks comes first</source>
            <translation>Un ou deux noms séparés par une virgule ; celui qui casse d’abord</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>&amp;Joueurs</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>Une taille courante, ou le chemin d’un fichier de table</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Table</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Entraînement</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>Match</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>Cours</translation>
        </message>
        <message>
            <source>&amp;For</source>
            <translation>&amp;Pour</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Commencer</translation>
        </message>
        <message>
            <source>Go on with it</source>
            <translation>Reprendre la séance</translation>
        </message>
        <message>
            <source>Kept in %1.</source>
            <translation>Conservé dans %1.</translation>
        </message>
        <message>
            <source>The session "%1" was not ended.</source>
            <translation>La séance « %1 » n’a pas été terminée.</translation>
        </message>
        <message>
            <source>By hand</source>
            <translation>À la main</translation>
        </message>
        <message>
            <source>From a film</source>
            <translation>D’un film</translation>
        </message>
        <message>
            <source>A session from a film</source>
            <translation>Une séance tirée d’un film</translation>
        </message>
        <message>
            <source>Every shot of the film is measured and ruled; you may stop at any time and keep what was measured.</source>
            <translation>Chaque coup du film est mesuré et arbitré ; vous pouvez arrêter à tout moment et garder ce qui a été mesuré.</translation>
        </message>
        <message>
            <source>Measure the film</source>
            <translation>Mesurer le film</translation>
        </message>
        <message>
            <source>Choose a film</source>
            <translation>Choisir un film</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Drop a film on the window, or choose one</source>
            <translation>Déposez un film sur la fenêtre, ou choisissez-en un</translation>
        </message>
        <message>
            <source>Fil&amp;m</source>
            <translation>Fil&amp;m</translation>
        </message>
        <message>
            <source>&amp;Rig</source>
            <translation>&amp;Calage</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>&amp;Regarder dans Relecture</translation>
        </message>
        <message>
            <source>Measure it &amp;again</source>
            <translation>Mes&amp;urer de nouveau</translation>
        </message>
        <message>
            <source>Choose the film first.</source>
            <translation>Choisissez d’abord le film.</translation>
        </message>
        <message>
            <source>Choose the rig of this camera first; Set-up makes one from a film or still of the table.</source>
            <translation>Choisissez d’abord le calage de cette caméra ; l’installation le fait d’après un film ou une photo de la table.</translation>
        </message>
        <message>
            <source>Choose the table first: the table.json that was measured, or a usual size such as 9ft.</source>
            <translation>Choisissez d’abord la table : le table.json mesuré, ou une taille usuelle telle que 9ft.</translation>
        </message>
        <message>
            <source>Live</source>
            <translation>En direct</translation>
        </message>
        <message>
            <source>A session while it is played</source>
            <translation>Une séance pendant qu’elle se joue</translation>
        </message>
        <message>
            <source>A camera looks on: every shot is measured and ruled as soon as the balls rest. Ask those who play before you film them.</source>
            <translation>Une caméra regarde : chaque coup est mesuré et arbitré dès que les billes s’arrêtent. Demandez leur accord aux joueurs avant de les filmer.</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>Ca&amp;méra</translation>
        </message>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>Choisissez d’abord une caméra, ou le film qui la remplace.</translation>
        </message>
        <message>
            <source>&amp;Keep the film beside the record</source>
            <translation>Garder le &amp;film à côté du carnet</translation>
        </message>
        <message>
            <source>Only of people whose consent to being filmed is noted in Players; measured is either way</source>
            <translation>Seulement pour les personnes dont le consentement à être filmées est noté dans Joueurs ; la mesure a lieu de toute façon</translation>
        </message>
        <message>
            <source>Measure it all the &amp;same</source>
            <translation>Me&amp;surer quand même</translation>
        </message>
        <message>
            <source>Mend &amp;it in Set-up</source>
            <translation>Corr&amp;iger dans Installation</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillCamera</name>
        <message>
            <source>No camera is chosen; connect one, or choose a film that stands in for it.</source>
            <translation>Aucune caméra n’est choisie ; branchez-en une, ou choisissez un film qui la remplace.</translation>
        </message>
        <message>
            <source>Blurred: the board's edges are %1 px wide. Hold it still, or light it better.</source>
            <translation>Flou : les bords de la mire font %1 px de large. Tenez-la immobile, ou éclairez mieux.</translation>
        </message>
        <message>
            <source>The camera's image is mirrored; switch that off in the camera's own settings.</source>
            <translation>L’image de la caméra est en miroir ; désactivez-le dans les réglages de la caméra.</translation>
        </message>
        <message>
            <source>This print has the old layout, its first square light; print the board anew.</source>
            <translation>Cette impression a l’ancienne disposition, première case claire ; réimprimez la mire.</translation>
        </message>
        <message>
            <source>The board is not seen; hold it so that most of its squares show.</source>
            <translation>La mire n’est pas vue ; tenez-la de façon que la plupart de ses cases se voient.</translation>
        </message>
        <message>
            <source>The board is where %1 has it already; move or tilt it.</source>
            <translation>La mire est là où %1 l’a déjà ; déplacez-la ou inclinez-la.</translation>
        </message>
        <message>
            <source>The stills so far are %1 × %2 px and this image has %3 × %4 px; a lens belongs to one image size.</source>
            <translation>Les photos jusqu’ici font %1 × %2 px et cette image %3 × %4 px ; un objectif va avec une seule taille d’image.</translation>
        </message>
        <message>
            <source>Sharp: the board's edges are %1 px wide.</source>
            <translation>Net : les bords de la mire font %1 px de large.</translation>
        </message>
        <message>
            <source>The board is seen; it is too small in the picture to say how sharp it is.</source>
            <translation>La mire est vue ; elle est trop petite dans l’image pour juger de la netteté.</translation>
        </message>
        <message>
            <source>With it the board was in %1 % of the picture, after %2 %.</source>
            <translation>Avec elle, la mire aura été dans %1 % de l’image, contre %2 %.</translation>
        </message>
        <message>
            <source>The board was here before; the empty parts of the picture would gain more.</source>
            <translation>La mire est déjà passée ici ; les parties vides de l’image y gagneraient plus.</translation>
        </message>
        <message>
            <source>The board was changed; start the camera anew, so that it is looked for.</source>
            <translation>La mire a été changée ; relancez la caméra pour qu’elle soit cherchée.</translation>
        </message>
        <message>
            <source>Not taken. %1</source>
            <comment>a sentence that says why</comment>
            <translation>Non prise. %1</translation>
        </message>
        <message>
            <source>Stop the ca&amp;mera</source>
            <translation>Arrêter la &amp;caméra</translation>
        </message>
        <message>
            <source>Look through the ca&amp;mera</source>
            <translation>Regarder par la &amp;caméra</translation>
        </message>
        <message>
            <source>Ta&amp;ke this still</source>
            <translation>Prendre cette ph&amp;oto</translation>
        </message>
        <message>
            <source>Take stills with a ca&amp;mera…</source>
            <translation>Prendre des photos avec une &amp;caméra…</translation>
        </message>
        <message>
            <source>Let the camera run, hold the board to it, and take a still wherever the picture is still empty.</source>
            <translation>Laissez tourner la caméra, présentez-lui la mire, et prenez une photo partout où l’image est encore vide.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillView</name>
        <message>
            <source>What the camera sees of the board</source>
            <translation>Ce que la caméra voit de la mire</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SuggestionPanel</name>
        <message>
            <source>For whom a shot is suggested</source>
            <translation>Pour qui un coup est suggéré</translation>
        </message>
        <message>
            <source>for a beginner</source>
            <translation>pour un débutant</translation>
        </message>
        <message>
            <source>for a club player</source>
            <translation>pour un joueur de club</translation>
        </message>
        <message>
            <source>for an expert</source>
            <translation>pour un expert</translation>
        </message>
        <message>
            <source>Suggested shots, best first</source>
            <translation>Coups suggérés, le meilleur d’abord</translation>
        </message>
        <message>
            <source>What if the cue ball left at this speed</source>
            <translation>Et si la blanche partait à cette vitesse</translation>
        </message>
        <message>
            <source>What if the tip struck so far right of centre, in ball radii</source>
            <translation>Et si le procédé frappait d’autant à droite du centre, en rayons de bille</translation>
        </message>
        <message>
            <source>What if the tip struck so far above centre, in ball radii</source>
            <translation>Et si le procédé frappait d’autant au-dessus du centre, en rayons de bille</translation>
        </message>
        <message>
            <source>What if: speed</source>
            <translation>Et si : vitesse</translation>
        </message>
        <message>
            <source>side</source>
            <translation>côté</translation>
        </message>
        <message>
            <source>height</source>
            <translation>hauteur</translation>
        </message>
        <message>
            <source>for the player at the table</source>
            <translation>pour le joueur à la table</translation>
        </message>
        <message>
            <source>for %1</source>
            <comment>a player</comment>
            <translation>pour %1</translation>
        </message>
        <message>
            <source>Looking for a shot…</source>
            <translation>Recherche d’un coup…</translation>
        </message>
        <message>
            <source>With this speed and tip point no aim pots the ball.</source>
            <translation>Avec cette vitesse et ce point d’attaque, aucune visée n’empoche la bille.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TableEditor</name>
        <message>
            <source>Table; tab chooses a ball, the arrow keys move it, page up and down choose its pocket</source>
            <translation>Table ; la tabulation choisit une bille, les flèches la déplacent, page précédente et page suivante choisissent sa poche</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TablePage</name>
        <message>
            <source>Such as: Hall, table 2</source>
            <translation>Par exemple : salle, table 2</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nom</translation>
        </message>
        <message>
            <source>%1: %2 × %3 mm</source>
            <translation>%1 : %2 × %3 mm</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Mesurée</translation>
        </message>
        <message>
            <source>&amp;Size</source>
            <translation>&amp;Taille</translation>
        </message>
        <message>
            <source>Length from nose to nose</source>
            <translation>Longueur de nez à nez</translation>
        </message>
        <message>
            <source>&amp;Length</source>
            <translation>&amp;Longueur</translation>
        </message>
        <message>
            <source>Width from nose to nose</source>
            <translation>Largeur de nez à nez</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>La&amp;rgeur</translation>
        </message>
        <message>
            <source>Diagonal A: head right to foot left</source>
            <translation>Diagonale A : tête droite à pied gauche</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>non mesurée</translation>
        </message>
        <message>
            <source>Diagonal &amp;A</source>
            <translation>Diagonale &amp;A</translation>
        </message>
        <message>
            <source>Diagonal B: head left to foot right</source>
            <translation>Diagonale B : tête gauche à pied droit</translation>
        </message>
        <message>
            <source>Diagonal &amp;B</source>
            <translation>Diagonale &amp;B</translation>
        </message>
        <message>
            <source>&amp;Open a table file…</source>
            <translation>&amp;Ouvrir un fichier de table…</translation>
        </message>
        <message>
            <source>Open a table file</source>
            <translation>Ouvrir un fichier de table</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>Fichiers de table (*.json);;Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Both diagonals, from nose corner to nose corner, tell whether the table is square.</source>
            <translation>Les deux diagonales, de coin de nez à coin de nez, disent si la table est d’équerre.</translation>
        </message>
        <message>
            <source>No table has these lengths and diagonals (%1 mm apart); measure again, every time from nose to nose.</source>
            <translation>Aucune table n’a ces longueurs et ces diagonales (écart de %1 mm) ; mesurez de nouveau, chaque fois de nez à nez.</translation>
        </message>
        <message>
            <source>Square, as well as a tape can tell (%1 mm).</source>
            <translation>D’équerre, pour autant qu’un mètre ruban puisse le dire (%1 mm).</translation>
        </message>
        <message>
            <source>left</source>
            <comment>of the table</comment>
            <translation>la gauche</translation>
        </message>
        <message>
            <source>right</source>
            <comment>of the table</comment>
            <translation>la droite</translation>
        </message>
        <message>
            <source>Out of square: the foot is pushed %1 mm to the %2 against the head. A ball's place is off by up to half of that; have the rails set, or measure from noses that are straight.</source>
            <translation>Pas d’équerre : le pied est décalé de %1 mm vers %2 par rapport à la tête. La position d’une bille est fausse de la moitié au plus ; faites régler les bandes, ou mesurez à partir de nez bien droits.</translation>
        </message>
        <message>
            <source>the table's name</source>
            <translation>nom de la table</translation>
        </message>
        <message>
            <source>the table's size</source>
            <translation>dimensions de la table</translation>
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
            <translation>&amp;Sans repères : déduire la position de la caméra des bandes</translation>
        </message>
        <message>
            <source>left</source>
            <comment>side of the picture</comment>
            <translation>à gauche</translation>
        </message>
        <message>
            <source>right</source>
            <comment>side of the picture</comment>
            <translation>à droite</translation>
        </message>
        <message>
            <source>top</source>
            <comment>side of the picture</comment>
            <translation>en haut</translation>
        </message>
        <message>
            <source>bottom</source>
            <comment>side of the picture</comment>
            <translation>en bas</translation>
        </message>
        <message>
            <source>The picture has the table's &amp;head at its</source>
            <translation>&amp;Tête de la table dans l’image</translation>
        </message>
        <message>
            <source>Side of the tags' black square</source>
            <translation>Côté du carré noir des repères</translation>
        </message>
        <message>
            <source>&amp;Black side</source>
            <translation>Côté &amp;noir</translation>
        </message>
        <message>
            <source>Height of the tags above the cloth</source>
            <translation>Hauteur des repères au-dessus du tapis</translation>
        </message>
        <message>
            <source>H&amp;eight above the cloth</source>
            <translation>&amp;Hauteur au-dessus du tapis</translation>
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
            <translation>Faire la &amp;feuille (PDF)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Impression</translation>
        </message>
        <message>
            <source>Lay one tag flat near each corner of the rails, face up, where no ball or hand covers them all. Measure the black square's corners 1 to 4 (top left, top right, bottom right, bottom left of the print) from the table's middle, x toward the foot, y to the left as seen from the head, to half a millimetre. Corners 3 and 4 may be left empty.</source>
            <translation>Posez un repère à plat près de chaque coin du cadre, face vers le haut, là où aucune bille ni main ne les couvre tous. Mesurez les coins 1 à 4 du carré noir (haut gauche, haut droit, bas droit, bas gauche de l’impression) depuis le milieu de la table, x vers le pied, y vers la gauche vu de la tête, au demi-millimètre près. Les coins 3 et 4 peuvent rester vides.</translation>
        </message>
        <message>
            <source>The tags' corners in millimetres from the table's middle</source>
            <translation>Les coins des repères, en millimètres depuis le milieu de la table</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Repère</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>Hauteur</translation>
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
            <translation>&amp;Ajouter un repère</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Retirer</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>Faire la feuille</translation>
        </message>
        <message>
            <source>tags.pdf</source>
            <translation>reperes.pdf</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The tags are in %1; print it at 100 % and measure its lines.</source>
            <translation>Les repères sont dans %1 ; imprimez-les à 100 % et mesurez leurs traits.</translation>
        </message>
        <message>
            <source>"%1" is no length in millimetres; type a number such as -1117.5.</source>
            <translation>« %1 » n’est pas une longueur en millimètres ; saisissez un nombre comme -1117,5.</translation>
        </message>
        <message>
            <source>The cushions alone leave a ball's place open by several millimetres; four tags bring about one. The step Trust shows it.</source>
            <translation>Les bandes seules laissent la position d’une bille incertaine de plusieurs millimètres ; quatre repères la ramènent à environ un. L’étape Confiance le montre.</translation>
        </message>
        <message numerus="yes">
            <source>%n tag(s) measured; at least three are needed, four check each other.</source>
            <translation>
                <numerusform>%n repère mesuré ; il en faut au moins trois, quatre se contrôlent entre eux.</numerusform>
                <numerusform>%n repères mesurés ; il en faut au moins trois, quatre se contrôlent entre eux.</numerusform>
            </translation>
        </message>
        <message>
            <source>without tags</source>
            <translation>sans repères</translation>
        </message>
        <message>
            <source>the head's side</source>
            <translation>côté de la tête</translation>
        </message>
        <message>
            <source>the tags' side</source>
            <translation>côté des repères</translation>
        </message>
        <message>
            <source>the tags' height</source>
            <translation>hauteur des repères</translation>
        </message>
        <message>
            <source>a tag added</source>
            <translation>repère ajouté</translation>
        </message>
        <message>
            <source>a tag removed</source>
            <translation>repère retiré</translation>
        </message>
        <message>
            <source>tag %1, as measured</source>
            <translation>repère %1, mesuré</translation>
        </message>
        <message>
            <source>From its lines alone a table cannot be told from the same one turned end for end, seen in a mirror, or a twentieth larger or smaller: the head's side here, a picture that is not mirrored and the size in the step Table are taken on your word.</source>
            <translation>À ses seules lignes, une table ne se distingue pas de la même retournée bout pour bout, vue dans un miroir, ou plus grande ou plus petite d’un vingtième : le côté de la tête ici, une image non inversée et la taille à l’étape Table sont pris sur votre parole.</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TimeLine</name>
        <message>
            <source>Time line of the session</source>
            <translation>Ligne de temps de la séance</translation>
        </message>
        <message>
            <source>made above, missed below</source>
            <translation>réussis en haut, manqués en bas</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TipPointView</name>
        <message>
            <source>Tip point on the cue ball's face</source>
            <translation>Point d’attaque sur la blanche</translation>
        </message>
    </context>
    <context>
        <name>ferrule::UndoRow</name>
        <message>
            <source>Undo: %1 (Ctrl+Z)</source>
            <translation>Annuler : %1 (Ctrl+Z)</translation>
        </message>
        <message>
            <source>Nothing to undo</source>
            <translation>Rien à annuler</translation>
        </message>
        <message>
            <source>Redo: %1 (Ctrl+Y)</source>
            <translation>Refaire : %1 (Ctrl+Y)</translation>
        </message>
        <message>
            <source>Nothing to redo</source>
            <translation>Rien à refaire</translation>
        </message>
    </context>
    <context>
        <name>ferrule::WorkStrip</name>
        <message>
            <source>Progress</source>
            <translation>Progression</translation>
        </message>
    </context>
</TS>
