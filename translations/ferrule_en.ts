<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<TS version="2.1" language="en">
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
        <name>ferrule::ShotTreeModel</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n shot</numerusform>
                <numerusform>%n shots</numerusform>
            </translation>
        </message>
    </context>
</TS>
