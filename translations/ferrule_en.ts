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
        <name>ferrule::ShotFilter</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n shot</numerusform>
                <numerusform>%n shots</numerusform>
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
    </context>
</TS>
