<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<TS version="2.1" language="en">
    <context>
        <name>DrillWords</name>
        <message numerus="yes">
            <source>by way of %n cushion(s)</source>
            <translation>
                <numerusform>by way of %n cushion</numerusform>
                <numerusform>by way of %n cushions</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 by way of %n cushion(s) to %2</source>
            <translation>
                <numerusform>%1 by way of %n cushion to %2</numerusform>
                <numerusform>%1 by way of %n cushions to %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 is met by way of %n cushion(s)</source>
            <translation>
                <numerusform>%1 is met by way of %n cushion</numerusform>
                <numerusform>%1 is met by way of %n cushions</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s)</source>
            <translation>
                <numerusform>%n ball</numerusform>
                <numerusform>%n balls</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough yet to compare: at least %n try(s) in the last run and in those before.</source>
            <translation>
                <numerusform>Not enough yet to compare: at least %n try in the last run and in those before.</numerusform>
                <numerusform>Not enough yet to compare: at least %n tries in the last run and in those before.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>LiveWords</name>
        <message numerus="yes">
            <source>%n shot(s) stand in the record</source>
            <translation>
                <numerusform>%n shot stands in the record</numerusform>
                <numerusform>%n shots stand in the record</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n dropped</source>
            <translation>
                <numerusform>%n dropped</numerusform>
                <numerusform>%n dropped</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the picture is %n image(s) behind</source>
            <translation>
                <numerusform>the picture is %n image behind</numerusform>
                <numerusform>the picture is %n images behind</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>MeasuringWords</name>
        <message numerus="yes">
            <source>about %n minute(s) left</source>
            <translation>
                <numerusform>about %n minute left</numerusform>
                <numerusform>about %n minutes left</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>about %n hour(s) left</source>
            <translation>
                <numerusform>about %n hour left</numerusform>
                <numerusform>about %n hours left</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) measured in %1 of film.</source>
            <translation>
                <numerusform>%n shot measured in %1 of film.</numerusform>
                <numerusform>%n shots measured in %1 of film.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>The camera moved %n time(s): shots during a move are doubtful.</source>
            <translation>
                <numerusform>The camera moved once: shots during the move are doubtful.</numerusform>
                <numerusform>The camera moved %n times: shots during a move are doubtful.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand beside what would have been suggested.</source>
            <translation>
                <numerusform>%n shot stands beside what would have been suggested.</numerusform>
                <numerusform>%n shots stand beside what would have been suggested.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Stopped. %n shot(s) stand in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</source>
            <translation>
                <numerusform>Stopped. %n shot stands in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</numerusform>
                <numerusform>Stopped. %n shots stand in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>This film was measured before: session "%1" holds its %n shot(s).</source>
            <translation>
                <numerusform>This film was measured before: session "%1" holds its shot.</numerusform>
                <numerusform>This film was measured before: session "%1" holds its %n shots.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Measuring this film was broken off: session "%1" holds its first %n shot(s). Measured again, it becomes a session of its own beside that one.</source>
            <translation>
                <numerusform>Measuring this film was broken off: session "%1" holds its first shot. Measured again, it becomes a session of its own beside that one.</numerusform>
                <numerusform>Measuring this film was broken off: session "%1" holds its first %n shots. Measured again, it becomes a session of its own beside that one.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>MergeSentence</name>
        <message numerus="yes">
            <source>%n player(s)</source>
            <translation>
                <numerusform>%n player</numerusform>
                <numerusform>%n players</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n session</numerusform>
                <numerusform>%n sessions</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n shot</numerusform>
                <numerusform>%n shots</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n drill run(s)</source>
            <translation>
                <numerusform>%n drill run</numerusform>
                <numerusform>%n drill runs</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) had been corrected or gone on with there and are now as there.</source>
            <translation>
                <numerusform>%n frame had been corrected or gone on with there and is now as there.</numerusform>
                <numerusform>%n frames had been corrected or gone on with there and are now as there.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) were changed in both records and stay as they are here.</source>
            <translation>
                <numerusform>%n frame was changed in both records and stays as it is here.</numerusform>
                <numerusform>%n frames were changed in both records and stay as they are here.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n player(s) who were erased here were left out.</source>
            <translation>
                <numerusform>%n player who was erased here was left out.</numerusform>
                <numerusform>%n players who were erased here were left out.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>PeopleWords</name>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n session</numerusform>
                <numerusform>%n sessions</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n shot</numerusform>
                <numerusform>%n shots</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ReportWords</name>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln shot</numerusform>
                <numerusform>%Ln shots</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln session(s)</source>
            <translation>
                <numerusform>%Ln session</numerusform>
                <numerusform>%Ln sessions</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message numerus="yes">
            <source>Aim spread %1, from %n measured shot(s).</source>
            <translation>
                <numerusform>Aim spread %1, from %n measured shot.</numerusform>
                <numerusform>Aim spread %1, from %n measured shots.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SetUpWords</name>
        <message numerus="yes">
            <source>%n ball(s) lie there that do not belong to the set-up.</source>
            <translation>
                <numerusform>%n ball lies there that does not belong to the set-up.</numerusform>
                <numerusform>%n balls lie there that do not belong to the set-up.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ShotWords</name>
        <message numerus="yes">
            <source>%n ball(s) did not move.</source>
            <translation>
                <numerusform>%n ball did not move.</numerusform>
                <numerusform>%n balls did not move.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillsPlace</name>
        <message numerus="yes">
            <source>%n try(s) counted: %1</source>
            <translation>
                <numerusform>%n try counted: %1</numerusform>
                <numerusform>%n tries counted: %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n drill(s) taken over.</source>
            <translation>
                <numerusform>%n drill taken over.</numerusform>
                <numerusform>%n drills taken over.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::LensPage</name>
        <message numerus="yes">
            <source>%n still(s) used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</source>
            <translation>
                <numerusform>%n still used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</numerusform>
                <numerusform>%n stills used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesPanel</name>
        <message numerus="yes">
            <source>%n place(s) are set by hand.</source>
            <translation>
                <numerusform>%n place is set by hand.</numerusform>
                <numerusform>%n places are set by hand.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n cushion(s) were not found (dashed): place them.</source>
            <translation>
                <numerusform>%n cushion was not found (dashed): place it.</numerusform>
                <numerusform>%n cushions were not found (dashed): place them.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n sight(s) agree to %1 (rms) along their rails; furthest off, by %2, lies %3.</source>
            <translation>
                <numerusform>%n sight agrees to %1 (rms) along its rail; furthest off, by %2, lies %3.</numerusform>
                <numerusform>%n sights agree to %1 (rms) along their rails; furthest off, by %2, lies %3.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::QuestionPanel</name>
        <message numerus="yes">
            <source>%n more shot(s) wait for an answer.</source>
            <translation>
                <numerusform>%n more shot waits for an answer.</numerusform>
                <numerusform>%n more shots wait for an answer.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReviewPlace</name>
        <message numerus="yes">
            <source>The clip is in %1 (%n image(s)).</source>
            <translation>
                <numerusform>The clip is in %1 (%n image).</numerusform>
                <numerusform>The clip is in %1 (%n images).</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Suggestions worked out anew: %n shot(s).</source>
            <translation>
                <numerusform>Suggestions worked out anew: %n shot.</numerusform>
                <numerusform>Suggestions worked out anew: %n shots.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionPlace</name>
        <message numerus="yes">
            <source>%n shot(s) now stand beside what would have been suggested: see Review.</source>
            <translation>
                <numerusform>%n shot now stands beside what would have been suggested: see Review.</numerusform>
                <numerusform>%n shots now stand beside what would have been suggested: see Review.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) stand where the photo shows them. One look is not sure of the names: check them.</source>
            <translation>
                <numerusform>%n ball stands where the photo shows it. One look is not sure of its name: check it.</numerusform>
                <numerusform>%n balls stand where the photo shows them. One look is not sure of the names: check them.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotFilter</name>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln shot</numerusform>
                <numerusform>%Ln shots</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotTreeModel</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n shot</numerusform>
                <numerusform>%n shots</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::TagsPage</name>
        <message numerus="yes">
            <source>%n tag(s) measured; at least three are needed, four check each other.</source>
            <translation>
                <numerusform>%n tag measured; at least three are needed, four check each other.</numerusform>
                <numerusform>%n tags measured; at least three are needed, four check each other.</numerusform>
            </translation>
        </message>
    </context>
</TS>
