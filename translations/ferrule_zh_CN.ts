<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- SPDX-License-Identifier: GPL-3.0-or-later -->
<TS version="2.1" language="zh_CN">
    <context>
        <name>Actions</name>
        <message>
            <source>&amp;Open a record…</source>
            <translation>打开记录(&amp;O)…</translation>
        </message>
        <message>
            <source>Open a record of measured sessions</source>
            <translation>打开一份含有已测场次的记录</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>退出(&amp;Q)</translation>
        </message>
        <message>
            <source>Close the window</source>
            <translation>关闭窗口</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>撤销(&amp;U)</translation>
        </message>
        <message>
            <source>Take back the last change</source>
            <translation>撤回上一次更改</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>重做(&amp;R)</translation>
        </message>
        <message>
            <source>Make the change again</source>
            <translation>再次执行该更改</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>俯视图(&amp;P)</translation>
        </message>
        <message>
            <source>Show the table from above</source>
            <translation>从上方显示球台</translation>
        </message>
        <message>
            <source>&amp;Film</source>
            <translation>视频(&amp;F)</translation>
        </message>
        <message>
            <source>Show the film with the measured ways</source>
            <translation>显示视频及测得的球路</translation>
        </message>
        <message>
            <source>&amp;Side by side</source>
            <translation>并排(&amp;S)</translation>
        </message>
        <message>
            <source>Show plan and film together</source>
            <translation>同时显示俯视图和视频</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <translation>放大(&amp;I)</translation>
        </message>
        <message>
            <source>Enlarge the picture</source>
            <translation>放大画面</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <translation>缩小(&amp;O)</translation>
        </message>
        <message>
            <source>Make the picture smaller</source>
            <translation>缩小画面</translation>
        </message>
        <message>
            <source>&amp;Whole table</source>
            <translation>整张球台(&amp;W)</translation>
        </message>
        <message>
            <source>Fit the whole picture into its space</source>
            <translation>让整幅画面适合窗口</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>窄导航栏(&amp;N)</translation>
        </message>
        <message>
            <source>Show the places as icons only</source>
            <translation>页面只显示图标</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <translation>播放(&amp;P)</translation>
        </message>
        <message>
            <source>Play in real time, or pause</source>
            <translation>实时播放或暂停</translation>
        </message>
        <message>
            <source>Image back</source>
            <translation>上一帧</translation>
        </message>
        <message>
            <source>One image back</source>
            <translation>后退一帧</translation>
        </message>
        <message>
            <source>Image on</source>
            <translation>下一帧</translation>
        </message>
        <message>
            <source>One image on</source>
            <translation>前进一帧</translation>
        </message>
        <message>
            <source>Event back</source>
            <translation>上一事件</translation>
        </message>
        <message>
            <source>Back to the last contact, strike or rest</source>
            <translation>回到上一次碰撞、出杆或静止</translation>
        </message>
        <message>
            <source>Event on</source>
            <translation>下一事件</translation>
        </message>
        <message>
            <source>On to the next contact or to rest</source>
            <translation>前往下一次碰撞或静止</translation>
        </message>
        <message>
            <source>Shot back</source>
            <translation>上一杆</translation>
        </message>
        <message>
            <source>The shot before</source>
            <translation>前面一杆</translation>
        </message>
        <message>
            <source>Shot on</source>
            <translation>下一杆</translation>
        </message>
        <message>
            <source>The next shot</source>
            <translation>后面一杆</translation>
        </message>
        <message>
            <source>&amp;Filter the shots</source>
            <translation>筛选击球(&amp;F)</translation>
        </message>
        <message>
            <source>List the shots that meet conditions, or go back to all sessions</source>
            <translation>列出符合条件的击球，或回到全部场次</translation>
        </message>
        <message>
            <source>Play the &amp;list</source>
            <translation>连续播放(&amp;L)</translation>
        </message>
        <message>
            <source>Play the listed shots one after another, or stop</source>
            <translation>依次播放列出的击球，或停止</translation>
        </message>
        <message>
            <source>&amp;Made</source>
            <translation>进球(&amp;M)</translation>
        </message>
        <message>
            <source>The chosen ball went into its pocket</source>
            <translation>所选的球进了所选的袋</translation>
        </message>
        <message>
            <source>Missed thic&amp;k</source>
            <translation>未进，偏厚(&amp;K)</translation>
        </message>
        <message>
            <source>The chosen ball was hit too full</source>
            <translation>所选的球打厚了</translation>
        </message>
        <message>
            <source>Missed thi&amp;n</source>
            <translation>未进，偏薄(&amp;N)</translation>
        </message>
        <message>
            <source>The chosen ball was cut too much</source>
            <translation>所选的球打薄了</translation>
        </message>
        <message>
            <source>M&amp;issed</source>
            <translation>未进(&amp;I)</translation>
        </message>
        <message>
            <source>The chosen ball was missed, on either side</source>
            <translation>所选的球未进，不论偏哪一侧</translation>
        </message>
        <message>
            <source>&amp;Safety</source>
            <translation>防守(&amp;S)</translation>
        </message>
        <message>
            <source>A safety was played</source>
            <translation>打了一杆防守</translation>
        </message>
        <message>
            <source>S&amp;cratch</source>
            <translation>母球落袋(&amp;C)</translation>
        </message>
        <message>
            <source>The cue ball fell or left the table</source>
            <translation>母球落袋或离台</translation>
        </message>
        <message>
            <source>&amp;Foul…</source>
            <translation>犯规(&amp;F)…</translation>
        </message>
        <message>
            <source>Another foul, to be chosen</source>
            <translation>其他犯规，从列表中选择</translation>
        </message>
        <message>
            <source>&amp;Break</source>
            <translation>开球(&amp;B)</translation>
        </message>
        <message>
            <source>The balls were broken</source>
            <translation>打了开球</translation>
        </message>
        <message>
            <source>Su&amp;ggest a shot</source>
            <translation>建议打法(&amp;G)</translation>
        </message>
        <message>
            <source>Show what would be suggested here, or hide it</source>
            <translation>显示或隐藏此处的建议打法</translation>
        </message>
        <message>
            <source>&amp;Rack the balls</source>
            <translation>摆球(&amp;R)</translation>
        </message>
        <message>
            <source>Set all balls up for a break</source>
            <translation>摆好全部球准备开球</translation>
        </message>
        <message>
            <source>Ne&amp;xt frame</source>
            <translation>下一局(&amp;X)</translation>
        </message>
        <message>
            <source>End this frame and begin the next one</source>
            <translation>结束本局并开始下一局</translation>
        </message>
        <message>
            <source>&amp;End the session</source>
            <translation>结束场次(&amp;E)</translation>
        </message>
        <message>
            <source>Keep all shots and close the session</source>
            <translation>保留全部击球并关闭该场次</translation>
        </message>
        <message>
            <source>&amp;Shots behind it</source>
            <translation>查看对应击球(&amp;S)</translation>
        </message>
        <message>
            <source>Look at the shots behind the chosen part of a chart</source>
            <translation>查看图表所选部分背后的各杆</translation>
        </message>
        <message>
            <source>&amp;Export the chart…</source>
            <translation>导出图表(&amp;E)…</translation>
        </message>
        <message>
            <source>Write the chosen chart as SVG, PNG or CSV</source>
            <translation>将所选图表写成SVG、PNG或CSV</translation>
        </message>
        <message>
            <source>Export the &amp;report…</source>
            <translation>导出报告(&amp;R)…</translation>
        </message>
        <message>
            <source>Write the report as PDF or HTML, or its numbers as CSV</source>
            <translation>将报告写成PDF或HTML，或将其数字写成CSV</translation>
        </message>
        <message>
            <source>Step &amp;back</source>
            <translation>上一步(&amp;B)</translation>
        </message>
        <message>
            <source>The step of the set-up before</source>
            <translation>设置的上一步</translation>
        </message>
        <message>
            <source>Step &amp;on</source>
            <translation>下一步(&amp;O)</translation>
        </message>
        <message>
            <source>The next step of the set-up</source>
            <translation>设置的下一步</translation>
        </message>
        <message>
            <source>&amp;Check the rig again…</source>
            <translation>重新检查机位(&amp;C)…</translation>
        </message>
        <message>
            <source>Ask a film whether the rig in use still fits</source>
            <translation>用一段视频检查当前机位是否仍然适用</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>停止(&amp;S)</translation>
        </message>
        <message>
            <source>Stop the long work that is going on</source>
            <translation>停止正在进行的长时间任务</translation>
        </message>
        <message>
            <source>&amp;Metres per second</source>
            <translation>米/秒(&amp;M)</translation>
        </message>
        <message>
            <source>Show speeds in m/s</source>
            <translation>球速以m/s显示</translation>
        </message>
        <message>
            <source>&amp;Kilometres per hour</source>
            <translation>千米/时(&amp;K)</translation>
        </message>
        <message>
            <source>Show speeds in km/h</source>
            <translation>球速以km/h显示</translation>
        </message>
        <message>
            <source>M&amp;iles per hour</source>
            <translation>英里/时(&amp;I)</translation>
        </message>
        <message>
            <source>Show speeds in mph</source>
            <translation>球速以mph显示</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>跟随系统(&amp;S)</translation>
        </message>
        <message>
            <source>Light or dark as the desktop is</source>
            <translation>明暗与桌面一致</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>浅色(&amp;L)</translation>
        </message>
        <message>
            <source>Always light</source>
            <translation>始终浅色</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>深色(&amp;D)</translation>
        </message>
        <message>
            <source>Always dark</source>
            <translation>始终深色</translation>
        </message>
        <message>
            <source>&amp;Keys</source>
            <translation>快捷键(&amp;K)</translation>
        </message>
        <message>
            <source>&amp;About Ferrule</source>
            <translation>关于Ferrule(&amp;A)</translation>
        </message>
        <message>
            <source>&amp;Record</source>
            <translation>记录(&amp;R)</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>编辑(&amp;E)</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>视图(&amp;V)</translation>
        </message>
        <message>
            <source>&amp;Step</source>
            <translation>步进(&amp;S)</translation>
        </message>
        <message>
            <source>Sess&amp;ion</source>
            <translation>场次(&amp;I)</translation>
        </message>
        <message>
            <source>Fi&amp;gures</source>
            <translation>图表(&amp;G)</translation>
        </message>
        <message>
            <source>Set-&amp;up</source>
            <translation>设置(&amp;U)</translation>
        </message>
        <message>
            <source>S&amp;peed unit</source>
            <translation>球速单位(&amp;P)</translation>
        </message>
        <message>
            <source>&amp;Appearance</source>
            <translation>外观(&amp;A)</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>帮助(&amp;H)</translation>
        </message>
        <message>
            <source>The desktop's language, where the program speaks it</source>
            <translation>桌面系统的语言（若本程序支持）</translation>
        </message>
        <message>
            <source>Show every word in this language</source>
            <translation>全部文字用此语言显示</translation>
        </message>
        <message>
            <source>&amp;How this place is used</source>
            <translation>本页用法(&amp;H)</translation>
        </message>
        <message>
            <source>What the place is for, and the steps in their order</source>
            <translation>本页用途和操作步骤</translation>
        </message>
        <message>
            <source>Every action of the window and its keys</source>
            <translation>窗口的全部操作及其按键</translation>
        </message>
        <message>
            <source>Version, cautions and licences</source>
            <translation>版本、注意事项和许可</translation>
        </message>
        <message>
            <source>&amp;Language</source>
            <translation>语言(&amp;L)</translation>
        </message>
        <message>
            <source>Balls from a &amp;photo…</source>
            <translation>从照片取球位(&amp;P)…</translation>
        </message>
        <message>
            <source>Put the balls where a photo of the table's camera shows them</source>
            <translation>按球台相机拍的照片摆放各球</translation>
        </message>
        <message>
            <source>&amp;Correct the shot…</source>
            <translation>更正此杆(&amp;C)…</translation>
        </message>
        <message>
            <source>Put right what was read wrongly of the shot in Review</source>
            <translation>在复盘中更正此杆读错的内容</translation>
        </message>
        <message>
            <source>Correct &amp;ball and pocket…</source>
            <translation>更正球和袋口(&amp;B)…</translation>
        </message>
        <message>
            <source>Say which ball was meant for which pocket</source>
            <translation>说明哪颗球打向哪个袋口</translation>
        </message>
        <message>
            <source>Correct who &amp;played…</source>
            <translation>更正击球者(&amp;P)…</translation>
        </message>
        <message>
            <source>Say who played the shot</source>
            <translation>说明是谁打的这一杆</translation>
        </message>
        <message>
            <source>Correct the ru&amp;ling…</source>
            <translation>更正判罚(&amp;L)…</translation>
        </message>
        <message>
            <source>Replace what the referee made of the shot</source>
            <translation>替换裁判对此杆的判定</translation>
        </message>
        <message>
            <source>&amp;Swap the names of two balls…</source>
            <translation>交换两颗球的名称(&amp;S)…</translation>
        </message>
        <message>
            <source>Say that two balls were taken for each other</source>
            <translation>说明两颗球被相互认错</translation>
        </message>
        <message>
            <source>&amp;Move balls</source>
            <translation>移动球(&amp;M)</translation>
        </message>
        <message>
            <source>Move balls to where they lay before the shot, then after it</source>
            <translation>把球移到击球前的位置，然后是击球后的位置</translation>
        </message>
        <message>
            <source>Write a no&amp;te</source>
            <translation>写备注(&amp;T)</translation>
        </message>
        <message>
            <source>Write a note on the shot in Review</source>
            <translation>为复盘中的此杆写备注</translation>
        </message>
        <message>
            <source>Give a ta&amp;g</source>
            <translation>加标签(&amp;G)</translation>
        </message>
        <message>
            <source>Give the shot in Review a tag, by which it can be found</source>
            <translation>给复盘中的此杆加上便于查找的标签</translation>
        </message>
        <message>
            <source>S&amp;ave the picture…</source>
            <translation>保存图片(&amp;A)…</translation>
        </message>
        <message>
            <source>&amp;Add a player</source>
            <translation>添加球员(&amp;A)</translation>
        </message>
        <message>
            <source>Add a player to the record</source>
            <translation>将一名球员加入记录</translation>
        </message>
        <message>
            <source>Add a &amp;guest</source>
            <translation>添加访客(&amp;G)</translation>
        </message>
        <message>
            <source>Add somebody whose shots are given to a player later, or erased</source>
            <translation>添加某人，其击球以后归给一名球员或被删除</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>球员(&amp;P)</translation>
        </message>
        <message>
            <source>&amp;Export the player…</source>
            <translation>导出球员(&amp;E)…</translation>
        </message>
        <message>
            <source>Write all that is kept of the chosen player into a folder</source>
            <translation>把所选球员保存的全部内容写入一个文件夹</translation>
        </message>
        <message>
            <source>&amp;Take in another record…</source>
            <translation>并入另一份记录(&amp;T)…</translation>
        </message>
        <message>
            <source>Add what a record of another computer holds, without doubles</source>
            <translation>加入另一台电脑上的记录内容，不产生重复</translation>
        </message>
        <message>
            <source>Answer &amp;1</source>
            <translation>答案&amp;1</translation>
        </message>
        <message>
            <source>Give the answer of this number to what the referee asks</source>
            <translation>以此编号的答案回答裁判的问题</translation>
        </message>
        <message>
            <source>Answer &amp;2</source>
            <translation>答案&amp;2</translation>
        </message>
        <message>
            <source>Answer &amp;3</source>
            <translation>答案&amp;3</translation>
        </message>
        <message>
            <source>Answer &amp;4</source>
            <translation>答案&amp;4</translation>
        </message>
        <message>
            <source>Answer &amp;5</source>
            <translation>答案&amp;5</translation>
        </message>
        <message>
            <source>Answer &amp;6</source>
            <translation>答案&amp;6</translation>
        </message>
        <message>
            <source>Answer &amp;7</source>
            <translation>答案&amp;7</translation>
        </message>
        <message>
            <source>Answer &amp;8</source>
            <translation>答案&amp;8</translation>
        </message>
        <message>
            <source>Answer &amp;later</source>
            <translation>以后回答(&amp;L)</translation>
        </message>
        <message>
            <source>Put the question off; Review keeps the shot marked</source>
            <translation>推迟该问题；复盘中该杆仍带标记</translation>
        </message>
        <message>
            <source>&amp;What the referee asks</source>
            <translation>裁判的问题(&amp;W)</translation>
        </message>
        <message>
            <source>Split or &amp;join shots…</source>
            <translation>拆分或合并击球(&amp;J)…</translation>
        </message>
        <message>
            <source>Say where a shot ends: another one began in it, or the next belongs to it</source>
            <translation>指明一杆到哪里为止：其中又出了一杆，或下一杆属于它</translation>
        </message>
        <message>
            <source>Balls put do&amp;wn…</source>
            <translation>放下的球(&amp;W)…</translation>
        </message>
        <message>
            <source>Put right which balls were put down before the shot</source>
            <translation>更正此杆之前放下了哪些球</translation>
        </message>
        <message>
            <source>Write the picture that Review shows as PNG, or the plan as SVG</source>
            <translation>将复盘中显示的画面存为PNG，俯视图也可存为SVG</translation>
        </message>
        <message>
            <source>Save a &amp;clip…</source>
            <translation>保存短片(&amp;C)…</translation>
        </message>
        <message>
            <source>Write the shot in Review as a short film</source>
            <translation>将复盘中的这一杆存为短片</translation>
        </message>
        <message>
            <source>&amp;Compare shots</source>
            <translation>比较击球(&amp;C)</translation>
        </message>
        <message>
            <source>Hold this shot and set others beside it, or end that</source>
            <translation>固定此杆并与其他杆并排，或结束比较</translation>
        </message>
        <message>
            <source>Play with &amp;sound</source>
            <translation>带声音播放(&amp;S)</translation>
        </message>
        <message>
            <source>Let the film be heard while it plays, or not</source>
            <translation>播放视频时是否出声</translation>
        </message>
        <message>
            <source>Fell &amp;too</source>
            <translation>也进袋(&amp;T)</translation>
        </message>
        <message>
            <source>The chosen ball fell in its pocket with the last shot, as on a break; dragging it into a pocket says the same</source>
            <translation>所选的球在上一杆也进了它的袋，例如开球时；把球拖进袋口也一样</translation>
        </message>
    </context>
    <context>
        <name>AnswerWords</name>
        <message>
            <source>Yes</source>
            <translation>是</translation>
        </message>
        <message>
            <source>No</source>
            <translation>否</translation>
        </message>
        <message>
            <source>It left the table</source>
            <translation>它离开了球台</translation>
        </message>
        <message>
            <source>It lies on the table</source>
            <translation>它在台面上</translation>
        </message>
        <message>
            <source>It fell: %1</source>
            <comment>a pocket</comment>
            <translation>落袋：%1</translation>
        </message>
        <message>
            <source>A safety was called</source>
            <translation>已声明防守</translation>
        </message>
        <message>
            <source>%1 has %2</source>
            <comment>a player, solids or stripes</comment>
            <translation>%1打%2</translation>
        </message>
        <message>
            <source>%1 or more</source>
            <comment>balls</comment>
            <translation>%1个或更多</translation>
        </message>
        <message>
            <source>Leave it as it is ruled</source>
            <translation>维持现有判罚</translation>
        </message>
    </context>
    <context>
        <name>AskedSentence</name>
        <message>
            <source>Aim</source>
            <translation>瞄准</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>球速</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>击点左右</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>击点高低</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>抬杆角</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the left of what was asked</source>
            <translation>母球比要求偏左%1</translation>
        </message>
        <message>
            <source>the cue ball leaves %1 to the right of what was asked</source>
            <translation>母球比要求偏右%1</translation>
        </message>
        <message>
            <source>shots come out %1 too fast</source>
            <translation>偏快%1</translation>
        </message>
        <message>
            <source>shots come out %1 too slow</source>
            <translation>偏慢%1</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far right</source>
            <translation>击点偏右%1</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too far left</source>
            <translation>击点偏左%1</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too high</source>
            <translation>击点偏高%1</translation>
        </message>
        <message>
            <source>the tip meets the ball %1 too low</source>
            <translation>击点偏低%1</translation>
        </message>
        <message>
            <source>the cue is %1 too steep</source>
            <translation>球杆偏陡%1</translation>
        </message>
        <message>
            <source>the cue is %1 too flat</source>
            <translation>球杆偏平%1</translation>
        </message>
        <message>
            <source>the harder the shot, the more falls short: %1 of what is asked</source>
            <translation>力度越大欠得越多：欠要求值的%1</translation>
        </message>
        <message>
            <source>the harder the shot, the more it overshoots: %1 of what is asked</source>
            <translation>力度越大超得越多：超要求值的%1</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too small</source>
            <translation>瞄准转角偏小%1</translation>
        </message>
        <message>
            <source>turns of the aim come out %1 too large</source>
            <translation>瞄准转角偏大%1</translation>
        </message>
        <message>
            <source>the more is asked, the more is missing: %1 of it</source>
            <translation>要求越大欠得越多：欠%1</translation>
        </message>
        <message>
            <source>the more is asked, the more is too much: %1 of it</source>
            <translation>要求越大超得越多：超%1</translation>
        </message>
        <message>
            <source>long shots fall %1 short</source>
            <translation>长距离球力度欠%1</translation>
        </message>
        <message>
            <source>long shots go %1 too far</source>
            <translation>长距离球力度超%1</translation>
        </message>
        <message>
            <source>clipped at %1: more was asked and did not arrive</source>
            <translation>最大只到%1：要求更大，但未达到</translation>
        </message>
        <message>
            <source>comes as asked, to within %1</source>
            <translation>与要求一致，误差在%1以内</translation>
        </message>
        <message>
            <source>single shots scatter by %1</source>
            <translation>单杆散布为%1</translation>
        </message>
        <message>
            <source>single shots scatter by less than the film can tell</source>
            <translation>单杆散布小于视频所能分辨的程度</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>quantity, findings</comment>
            <translation>%1：%2。</translation>
        </message>
    </context>
    <context>
        <name>CameraWords</name>
        <message>
            <source>%1 × %2, %3 images a second</source>
            <translation>%1 × %2，每秒 %3 帧</translation>
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
            <translation>%1：%2（%3至%4），%5</translation>
        </message>
        <message>
            <source>a change beyond luck</source>
            <translation>变化超出偶然</translation>
        </message>
        <message>
            <source>no change beyond luck</source>
            <translation>变化未超出偶然</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session. Hollow: matches.</source>
            <translation>须线和色带：95%区间。数字：该场杆数。空心：比赛。</translation>
        </message>
        <message>
            <source>Whiskers and band: 95 % interval. Numbers: shots of the session.</source>
            <translation>须线和色带：95%区间。数字：该场杆数。</translation>
        </message>
        <message>
            <source>cut across, distance down</source>
            <translation>横向为切角，纵向为距离</translation>
        </message>
        <message>
            <source>only %1</source>
            <translation>仅%1</translation>
        </message>
        <message>
            <source>Made, 95 % interval and number tried. Fewer than %1: not enough to say.</source>
            <translation>进球率、95%区间和尝试次数。少于%1次：不足以判断。</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>各袋口进球率</translation>
        </message>
        <message>
            <source>Made and number tried; lines: 95 % interval.</source>
            <translation>进球率和尝试次数；线段：95%区间。</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>未进球的厚薄</translation>
        </message>
        <message>
            <source>too thick</source>
            <translation>偏厚</translation>
        </message>
        <message>
            <source>too thin</source>
            <translation>偏薄</translation>
        </message>
        <message>
            <source>%1 thick</source>
            <translation>%1偏厚</translation>
        </message>
        <message>
            <source>not enough</source>
            <translation>数据不足</translation>
        </message>
        <message>
            <source>cuts to the left</source>
            <translation>左切</translation>
        </message>
        <message>
            <source>cuts to the right</source>
            <translation>右切</translation>
        </message>
        <message>
            <source>Missed cuts only. Right: 95 % interval of the share that was too thick.</source>
            <translation>仅统计未进的切球。右侧：偏厚比例的95%区间。</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>不同条件下难度相当的球</translation>
        </message>
        <message>
            <source>first 40 minutes</source>
            <translation>前40分钟</translation>
        </message>
        <message>
            <source>after 40 minutes</source>
            <translation>40分钟后</translation>
        </message>
        <message>
            <source>in practice</source>
            <translation>训练中</translation>
        </message>
        <message>
            <source>in matches</source>
            <translation>比赛中</translation>
        </message>
        <message>
            <source>Made, equally hard shots; lines: 95 % interval of the difference.</source>
            <translation>难度相当的球的进球率；线段：差值的95%区间。</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>a band of speed and its unit</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>按进袋方向的进球率</translation>
        </message>
        <message>
            <source>over %1°</source>
            <translation>超过%1°</translation>
        </message>
        <message>
            <source>%1 to %2°</source>
            <translation>%1至%2°</translation>
        </message>
        <message>
            <source>corner, %1</source>
            <comment>a pocket, angles</comment>
            <translation>角袋，%1</translation>
        </message>
        <message>
            <source>side, %1</source>
            <comment>a pocket, angles</comment>
            <translation>中袋，%1</translation>
        </message>
    </context>
    <context>
        <name>CheckSentence</name>
        <message>
            <source>%1 fits %2 and %3.</source>
            <translation>%1与%2和%3相符。</translation>
        </message>
        <message>
            <source>The camera has moved by %1 mm and turned by %2 degrees since %3 was made; make the rig again from %4.</source>
            <translation>%3建立之后，相机移动了%1 mm，转动了%2°；请用%4重建机位。</translation>
        </message>
        <message>
            <source>The lens in %1 belongs to another camera or another zoom than %2; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>%1中的镜头与%2不是同一台相机或同一变焦；请标定这台相机的镜头，再用它重建机位。</translation>
        </message>
        <message>
            <source>%1 was straightened before, and the lens in %2 straightens it a second time; switch off the lens correction of the camera or the editor and film again.</source>
            <translation>%1已经过畸变校正，%2中的镜头又校正了一次；请关闭相机或剪辑软件的镜头校正，重新拍摄。</translation>
        </message>
        <message>
            <source>%1 is bent by its lens and %2 does not straighten it; calibrate the lens of this camera and make the rig again with it.</source>
            <translation>%1有镜头畸变，而%2没有校正它；请标定这台相机的镜头，再用它重建机位。</translation>
        </message>
        <message>
            <source>The picture of %1 is %2 times the size that the lens in %3 was made for; film at the size, zoom and crop of the calibration, or calibrate again at this one and make the rig again.</source>
            <translation>%1的画面尺寸是%3中镜头标定尺寸的%2倍；请按标定时的尺寸、变焦和裁切拍摄，或按现在的画面重新标定并重建机位。</translation>
        </message>
        <message>
            <source>The tags lie %1 mm higher than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>标记比%2所写的高%1 mm；请量出标记离台呢的高度，改正该文件并重建机位。</translation>
        </message>
        <message>
            <source>The tags lie %1 mm lower than %2 says; measure their height above the cloth, correct the file and make the rig again.</source>
            <translation>标记比%2所写的低%1 mm；请量出标记离台呢的高度，改正该文件并重建机位。</translation>
        </message>
        <message>
            <source>Tag %1 lies %2 mm from where %3 has it; measure its corners, correct the file and make the rig again.</source>
            <translation>标记%1距%3所写的位置%2 mm；请量它的四角，改正该文件并重建机位。</translation>
        </message>
        <message>
            <source>The tags %1 lie in each other's place; swap them, or correct %2, and make the rig again.</source>
            <translation>标记%1互相放错了位置；请对调，或改正%2，然后重建机位。</translation>
        </message>
        <message>
            <source>Tag %1 is turned by %2 degrees from what %3 says; turn it, or correct the file, and make the rig again.</source>
            <translation>标记%1的朝向与%3所写的相差%2°；请转正标记或改正该文件，然后重建机位。</translation>
        </message>
        <message>
            <source>The table is %1 mm longer and %2 mm wider than %3 says (less than 0: shorter, narrower); measure it nose to nose, correct the file and make the rig again.</source>
            <translation>球台比%3所写的长%1 mm、宽%2 mm（负数表示更短、更窄）；请从前沿到前沿测量，改正该文件并重建机位。</translation>
        </message>
        <message>
            <source>%1 does not fit %2 and %3, and no single fault explains it; measure the tags again, make the rig again from this film, and check again.</source>
            <translation>%1与%2和%3不符，且无法用单一错误解释；请重新量标记，用此视频重建机位，再检查一次。</translation>
        </message>
        <message>
            <source>%1: not seen</source>
            <translation>%1：未见</translation>
        </message>
        <message>
            <source>%1: %2 mm (sound up to %3 mm)</source>
            <translation>%1：%2 mm（不超过%3 mm为正常）</translation>
        </message>
        <message>
            <source>%1 - too much</source>
            <translation>%1 - 过大</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <comment>two cushions</comment>
            <translation>%1和%2</translation>
        </message>
        <message>
            <source>Tag %1: from its place</source>
            <translation>标记%1：位置偏差</translation>
        </message>
        <message>
            <source>%1: nose from a straight line</source>
            <comment>a cushion</comment>
            <translation>%1：前沿的直线度偏差</translation>
        </message>
        <message>
            <source>%1: nose from its place (+ inward)</source>
            <comment>a cushion</comment>
            <translation>%1：前沿的位置偏差（向内为正）</translation>
        </message>
        <message>
            <source>%1: from parallel</source>
            <comment>two cushions</comment>
            <translation>%1：平行度偏差</translation>
        </message>
        <message>
            <source>Length nose to nose, seen minus measured</source>
            <translation>前沿间长度，所见减实测</translation>
        </message>
        <message>
            <source>Width nose to nose, seen minus measured</source>
            <translation>前沿间宽度，所见减实测</translation>
        </message>
        <message>
            <source>Diameters of the balls, largest minus smallest</source>
            <translation>球直径，最大减最小</translation>
        </message>
        <message>
            <source>Deepest ball inside a cushion or another ball</source>
            <translation>球嵌入库边或另一颗球的最大深度</translation>
        </message>
    </context>
    <context>
        <name>CorrectionMenu</name>
        <message>
            <source>is %1, and the other way round</source>
            <translation>其实是%1，反之亦然</translation>
        </message>
        <message>
            <source>to %1</source>
            <translation>打向%1</translation>
        </message>
        <message>
            <source>No pot was tried</source>
            <translation>没有打算进球</translation>
        </message>
        <message>
            <source>Nobody knows</source>
            <translation>没人知道</translation>
        </message>
        <message>
            <source>It was a foul</source>
            <translation>是犯规</translation>
        </message>
        <message>
            <source>It was no foul</source>
            <translation>不是犯规</translation>
        </message>
        <message>
            <source>%1 is at the table next</source>
            <translation>接下来由%1上台</translation>
        </message>
        <message>
            <source>The cue ball stays as it lies</source>
            <translation>母球留在原位</translation>
        </message>
        <message>
            <source>%1 wins the frame</source>
            <translation>%1赢得本局</translation>
        </message>
        <message>
            <source>The frame goes on</source>
            <translation>本局继续</translation>
        </message>
        <message>
            <source>As the referee ruled</source>
            <translation>按裁判的判定</translation>
        </message>
        <message>
            <source>In the whole shot</source>
            <translation>整杆之内</translation>
        </message>
        <message>
            <source>From this image on</source>
            <translation>从这一帧图像起</translation>
        </message>
        <message>
            <source>&amp;Result</source>
            <translation>结果(&amp;R)</translation>
        </message>
        <message>
            <source>&amp;Ball and pocket</source>
            <translation>球和袋口(&amp;B)</translation>
        </message>
        <message>
            <source>Ball that was met &amp;first</source>
            <translation>首先碰到的球(&amp;F)</translation>
        </message>
        <message>
            <source>Who &amp;played</source>
            <translation>击球者(&amp;P)</translation>
        </message>
        <message>
            <source>R&amp;uling</source>
            <translation>判罚(&amp;U)</translation>
        </message>
        <message>
            <source>&amp;Names of two balls</source>
            <translation>两颗球的名称(&amp;N)</translation>
        </message>
        <message>
            <source>Struck in this image</source>
            <translation>在这一帧图像击球</translation>
        </message>
        <message>
            <source>At rest from this image on</source>
            <translation>从这一帧图像起静止</translation>
        </message>
        <message>
            <source>&amp;Strike and rest</source>
            <translation>击球与静止(&amp;S)</translation>
        </message>
        <message>
            <source>Another shot was struck in this image</source>
            <translation>这一帧又出了一杆</translation>
        </message>
        <message>
            <source>The next shot belongs to this one</source>
            <translation>下一杆属于此杆</translation>
        </message>
        <message>
            <source>%1, put down at %2</source>
            <translation>%1，于%2放下</translation>
        </message>
        <message>
            <source>Nobody put it down</source>
            <translation>没有人放下它</translation>
        </message>
        <message>
            <source>It was another ball</source>
            <translation>是另一颗球</translation>
        </message>
        <message>
            <source>A ball was put down that is not listed</source>
            <translation>放下了一颗未列出的球</translation>
        </message>
        <message>
            <source>&amp;Where the shot ends</source>
            <translation>此杆的界限(&amp;W)</translation>
        </message>
        <message>
            <source>Balls put &amp;down before it</source>
            <translation>之前放下的球(&amp;D)</translation>
        </message>
    </context>
    <context>
        <name>CorrectionWords</name>
        <message>
            <source>player</source>
            <translation>球员</translation>
        </message>
        <message>
            <source>result</source>
            <translation>结果</translation>
        </message>
        <message>
            <source>first contact</source>
            <translation>首先碰球</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>母球落袋</translation>
        </message>
        <message>
            <source>ball</source>
            <translation>球</translation>
        </message>
        <message>
            <source>pocket</source>
            <translation>袋口</translation>
        </message>
        <message>
            <source>ruling</source>
            <translation>判罚</translation>
        </message>
        <message>
            <source>reading</source>
            <translation>读数</translation>
        </message>
        <message>
            <source>names of two balls</source>
            <translation>两颗球的名称</translation>
        </message>
        <message>
            <source>a ball's place before the shot</source>
            <translation>击球前某球的位置</translation>
        </message>
        <message>
            <source>a ball's place after the shot</source>
            <translation>击球后某球的位置</translation>
        </message>
        <message>
            <source>strike and rest</source>
            <translation>击球与静止</translation>
        </message>
        <message>
            <source>unknown</source>
            <translation>未知</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>是</translation>
        </message>
        <message>
            <source>no</source>
            <translation>否</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other</source>
            <translation>%1与%2被相互认错</translation>
        </message>
        <message>
            <source>%1 and %2 were taken for each other from %3 on</source>
            <translation>%1与%2从%3起被相互认错</translation>
        </message>
        <message>
            <source>%1 put on the table before the shot</source>
            <translation>%1在击球前被放上台面</translation>
        </message>
        <message>
            <source>%1 put on the table after the shot</source>
            <translation>%1在击球后被放上台面</translation>
        </message>
        <message>
            <source>%1 moved by %2 before the shot</source>
            <translation>%1在击球前移动%2</translation>
        </message>
        <message>
            <source>%1 moved by %2 after the shot</source>
            <translation>%1在击球后移动%2</translation>
        </message>
        <message>
            <source>Strike and rest: measured %1 and %2, corrected to %3 and %4</source>
            <translation>击球与静止：测得%1和%2，更正为%3和%4</translation>
        </message>
        <message>
            <source>Ruling: replaced by a person's</source>
            <translation>判罚：由人替换</translation>
        </message>
        <message>
            <source>%1: %2, confirmed</source>
            <translation>%1：%2，已确认</translation>
        </message>
        <message>
            <source>%1: measured %2, corrected to %3</source>
            <translation>%1：测得%2，更正为%3</translation>
        </message>
        <message>
            <source>ball and pocket</source>
            <translation>球和袋口</translation>
        </message>
        <message>
            <source>Say first which ball was meant for which pocket; then it can be made.</source>
            <translation>请先说明哪颗球打向哪个袋口，然后才能算进球。</translation>
        </message>
        <message>
            <source>No referee watched this shot, so there is no ruling to replace.</source>
            <translation>此杆没有裁判，因此没有可替换的判罚。</translation>
        </message>
        <message>
            <source>Neither ball was followed in this shot, so there are no names to swap.</source>
            <translation>此杆中两颗球都没有被跟踪，没有可交换的名称。</translation>
        </message>
        <message>
            <source>The ways of this shot do not reach so far; choose a time between them.</source>
            <translation>此杆的轨迹没有延伸到那里；请选择轨迹之内的时刻。</translation>
        </message>
        <message>
            <source>A later correction in this frame rests on this one; take that one back first.</source>
            <translation>本局后来的更正以此为依据；请先撤回那一项。</translation>
        </message>
        <message>
            <source>This frame is still being put in; undo the shot in Session instead.</source>
            <translation>本局仍在录入；请改在场次中撤销此杆。</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1，%2</translation>
        </message>
        <message>
            <source>note</source>
            <translation>备注</translation>
        </message>
        <message>
            <source>tag</source>
            <translation>标签</translation>
        </message>
        <message>
            <source>two shots in one</source>
            <translation>两杆合为一杆</translation>
        </message>
        <message>
            <source>one shot in two</source>
            <translation>一杆分成两杆</translation>
        </message>
        <message>
            <source>a ball put down before the shot</source>
            <translation>此杆之前放下的球</translation>
        </message>
        <message>
            <source>suggestion</source>
            <translation>建议</translation>
        </message>
        <message>
            <source>%1 was not put down at %2</source>
            <translation>%1在%2没有被放下</translation>
        </message>
        <message>
            <source>%1 was put down at %2</source>
            <translation>%1在%2被放下</translation>
        </message>
        <message>
            <source>Put down at %1: measured %2, corrected to %3</source>
            <translation>于%1放下：测得%2，更正为%3</translation>
        </message>
        <message>
            <source>%1 put down %2 away from where it was measured</source>
            <translation>%1放在距测得位置%2处</translation>
        </message>
        <message>
            <source>Measured as one shot, split in two at %1</source>
            <translation>测为一杆，于%1拆成两杆</translation>
        </message>
        <message>
            <source>Measured as two shots, joined at %1</source>
            <translation>测为两杆，于%1合并</translation>
        </message>
        <message>
            <source>This frame was put in by hand: its shots have no film by which to part or join them.</source>
            <translation>此局为手工输入：没有可据以拆分或合并击球的视频。</translation>
        </message>
        <message>
            <source>No shot follows in this frame, so there is nothing to join with.</source>
            <translation>此局之后没有别的击球，无可合并。</translation>
        </message>
        <message>
            <source>This ball was not put down there any more; choose again.</source>
            <translation>该球已不再记为放在那里；请重新选择。</translation>
        </message>
    </context>
    <context>
        <name>CueSection</name>
        <message>
            <source>Cue pointed to</source>
            <translation>球杆指向</translation>
        </message>
        <message>
            <source>Ball went to</source>
            <translation>球的去向</translation>
        </message>
        <message>
            <source>Between them</source>
            <translation>两者之差</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>抬杆角</translation>
        </message>
        <message>
            <source>Tip, side</source>
            <translation>击点左右</translation>
        </message>
        <message>
            <source>Tip, height</source>
            <translation>击点高低</translation>
        </message>
        <message>
            <source>Sway of the aim</source>
            <translation>瞄准晃动</translation>
        </message>
        <message>
            <source>Tip speed</source>
            <translation>皮头速度</translation>
        </message>
        <message>
            <source>Read from the tags on the cue.</source>
            <translation>由球杆上的标记读出。</translation>
        </message>
        <message>
            <source>Read from the shaft over the cloth; its height is not seen.</source>
            <translation>由台呢上方的杆身读出；看不出它的高度。</translation>
        </message>
        <message>
            <source>Between: + the ball went to the right of the cue's line.</source>
            <translation>两者之差：+ 球走在球杆线的右侧。</translation>
        </message>
        <message>
            <source>The tags on the cue were seen in too few images before the strike.</source>
            <translation>出杆前能看到球杆标记的画面太少。</translation>
        </message>
        <message>
            <source>The pitch log has a gap before this strike; let the sensor write without a break.</source>
            <translation>这次出杆前倾角记录有空缺；请让传感器连续记录。</translation>
        </message>
        <message>
            <source>The pitch log has another clock than the film and was left out; start both together.</source>
            <translation>倾角记录与视频的时钟不同，未被采用；请同时启动两者。</translation>
        </message>
        <message>
            <source>The tags are too small for this camera; it needs %1.</source>
            <translation>标记对这台相机太小；需要%1。</translation>
        </message>
    </context>
    <context>
        <name>DrillCharts</name>
        <message>
            <source>Number of tries under each run; whiskers are 95 % intervals, hollow dots rest on too few.</source>
            <translation>每轮下方为次数；竖线为95%区间，空心点表示次数太少。</translation>
        </message>
    </context>
    <context>
        <name>DrillWords</name>
        <message>
            <source>Centre-line there and back</source>
            <translation>中线往返</translation>
        </message>
        <message>
            <source>The cue ball alone, from the head spot to the foot cushion and back over its start. Always off to one side: aim or unmeant side spin. Now left, now right: the stroke.</source>
            <translation>只用母球，从开球点到置球端库边再弹回经过起点。总偏一侧：瞄准或无意的侧旋；时左时右：出杆。</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>直线定杆阶梯</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer. The cue ball stops within one ball's width of the contact. Stay on a rung until eight of ten succeed.</source>
            <translation>四个距离的直线球，每次加长一步。母球停在碰撞处一颗球以内。十次成功八次再上一级。</translation>
        </message>
        <message>
            <source>Straight follow bands</source>
            <translation>直线跟杆分档</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball follows into the first, second or third band behind the contact. Say the band before the stroke.</source>
            <translation>直线球；母球跟进到碰撞处之后的第一、第二或第三档。出杆前先说出档位。</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>直线拉杆分档</translation>
        </message>
        <message>
            <source>A straight pot; the cue ball comes back into the band that is called: stop, a quarter, a half or three quarters of the table's width.</source>
            <translation>直线球；母球拉回到所报的档位：定杆、台宽的四分之一、二分之一或四分之三。</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>比球到开球端库边</translation>
        </message>
        <message>
            <source>From behind the head string to the foot cushion and back. The cue ball rests within half a diamond of the head cushion.</source>
            <translation>从开球线后打到置球端库边再弹回。母球停在距开球端库边半个颗星以内。</translation>
        </message>
        <message>
            <source>Bare-table stop lines</source>
            <translation>空台停球线</translation>
        </message>
        <message>
            <source>The cue ball alone, to four lines in turn of distance: the middle, the foot cushion, the middle on the way back, and the head string's far side on the way back.</source>
            <translation>只用母球，依次停到四条越来越远的线：中线、置球端库边、返程的中线、返程的开球线之后。</translation>
        </message>
        <message>
            <source>Object-ball pace to the rail</source>
            <translation>目标球力度到库边</translation>
        </message>
        <message>
            <source>A full hit sends the object ball down the table; it rests within half a diamond of the foot cushion.</source>
            <translation>正面撞击把目标球送向远端；它停在距置球端库边半个颗星以内。</translation>
        </message>
        <message>
            <source>Cut fan</source>
            <translation>扇形切球</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball half a table's width away: straight, then cuts of 15, 30, 45 and 60 degrees. Misses on one side at every angle are aim; thick at every angle is throw not allowed for.</source>
            <translation>球在置球点，母球距半个台宽：直线，然后切15、30、45和60度。各角度都偏同一侧是瞄准问题；各角度都偏厚是没有考虑带球。</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>置球点长台切球组</translation>
        </message>
        <message>
            <source>The ball on the foot spot, the cue ball behind the head string: long cuts of about 33, 47 and 60 degrees.</source>
            <translation>球在置球点，母球在开球线后：约33、47和60度的长台切球。</translation>
        </message>
        <message>
            <source>Rail-frozen ball cut</source>
            <translation>贴库球切球</translation>
        </message>
        <message>
            <source>The ball touches the long cushion; send it along the cushion into the corner. Watch whether ball or cushion is met first.</source>
            <translation>球贴长库；沿库边送入底袋。注意先碰球还是先碰库。</translation>
        </message>
        <message>
            <source>Side-pocket pair</source>
            <translation>中袋一对</translation>
        </message>
        <message>
            <source>One ball before the side pocket, cut from the head and from the foot. The pocket takes little at this angle: pace decides.</source>
            <translation>中袋前一球，分别从开球端和置球端切入。此角度袋口容差小：力度决定成败。</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>薄球</translation>
        </message>
        <message>
            <source>A cut of about 65 degrees into the corner; the cue ball must stay on the table. Note which side the misses go to.</source>
            <translation>约65度切入底袋；母球必须留在台上。记下偏向哪一侧。</translation>
        </message>
        <message>
            <source>Stun to the mark</source>
            <translation>定杆到标记</translation>
        </message>
        <message>
            <source>A stun shot: the cue ball leaves along the tangent line and meets the long cushion in the marked piece. Short of it: draw; beyond it: follow.</source>
            <translation>定杆：母球沿切线离开，碰到长库的标记段。不到：带拉杆；超过：带跟杆。</translation>
        </message>
        <message>
            <source>Three-zone cue ball</source>
            <translation>母球三区</translation>
        </message>
        <message>
            <source>One pot, three places for the cue ball, called in turn. Pot and landing are counted apart and together.</source>
            <translation>一个进球，母球三个落点，轮流报出。进球与走位分别和合并计数。</translation>
        </message>
        <message>
            <source>Row on the centre string</source>
            <translation>中线一排球</translation>
        </message>
        <message>
            <source>Five balls in a row across the table, cue ball in hand. Pot all of them; the cue ball touches no cushion.</source>
            <translation>五颗球横排，自由球。全部打进；母球不碰库。</translation>
        </message>
        <message>
            <source>Correct-side two-ball</source>
            <translation>两球走对侧</translation>
        </message>
        <message>
            <source>Pot the first ball and come to the right side of the second: a cut of 15 to 45 degrees from the foot half. Then pot it.</source>
            <translation>打进第一球，走到第二球的正确一侧：从置球端半台切15到45度。然后打进它。</translation>
        </message>
        <message>
            <source>Called three-ball pattern</source>
            <translation>报球三球顺序</translation>
        </message>
        <message>
            <source>Three balls spread out, cue ball in hand. Say order, pockets and landing places first, then play it as it was said.</source>
            <translation>三球散开，自由球。先说出顺序、袋口和落点，再照着打。</translation>
        </message>
        <message>
            <source>Cue ball on the rail</source>
            <translation>母球贴库</translation>
        </message>
        <message>
            <source>The cue ball touches the cushion, so that only its top can be struck. A short stroke and a level cue pot more than force.</source>
            <translation>母球贴库，只能击打上部。短促出杆、球杆放平，胜过用力。</translation>
        </message>
        <message>
            <source>Straight-back bank to the side</source>
            <translation>翻袋进中袋</translation>
        </message>
        <message>
            <source>The ball goes to the opposite long cushion and back into the side pocket. Note whether misses are long or short; pace changes the angle.</source>
            <translation>球碰对面长库后弹回中袋。记下偏长还是偏短；力度会改变角度。</translation>
        </message>
        <message>
            <source>One-rail kick</source>
            <translation>一库解球</translation>
        </message>
        <message>
            <source>A blocker stands in the straight line. Meet the ball by way of one cushion; better still, leave it hidden.</source>
            <translation>直线上有障碍球。经一库碰到目标球；最好再把它藏住。</translation>
        </message>
        <message>
            <source>Two-rail kick</source>
            <translation>两库解球</translation>
        </message>
        <message>
            <source>The same by way of two cushions. Any part of the ball counts.</source>
            <translation>同样经两库。碰到就算。</translation>
        </message>
        <message>
            <source>Hide-behind safety</source>
            <translation>藏球防守</translation>
        </message>
        <message>
            <source>Meet the ball and bring the cue ball behind the two blockers, so that no straight way to the ball is left.</source>
            <translation>碰到目标球，把母球停到两颗障碍球后，使其没有直线可打。</translation>
        </message>
        <message>
            <source>Thin-hit distance safety</source>
            <translation>薄擦远台防守</translation>
        </message>
        <message>
            <source>A thin hit: the ball stays near the foot cushion, the cue ball comes back near the head cushion.</source>
            <translation>薄擦：目标球留在置球端库边附近，母球回到开球端库边附近。</translation>
        </message>
        <message>
            <source>Break control</source>
            <translation>开球控制</translation>
        </message>
        <message>
            <source>A full rack, always from the same place: pot a ball and leave the cue ball in the middle of the table.</source>
            <translation>整组球，总从同一位置开：打进一球，母球留在台中央。</translation>
        </message>
        <message>
            <source>Open-spread run</source>
            <translation>散球清台</translation>
        </message>
        <message>
            <source>Balls spread apart, none near a cushion, cue ball in hand: pot all of them in any order. The balls made before a miss are counted.</source>
            <translation>球散开，都不靠库，自由球：任意顺序全部打进。计失误前打进的球数。</translation>
        </message>
        <message>
            <source>straight</source>
            <translation>直线</translation>
        </message>
        <message>
            <source>speed</source>
            <translation>力度</translation>
        </message>
        <message>
            <source>stop</source>
            <translation>定杆</translation>
        </message>
        <message>
            <source>follow</source>
            <translation>跟杆</translation>
        </message>
        <message>
            <source>draw</source>
            <translation>拉杆</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>切球</translation>
        </message>
        <message>
            <source>aim</source>
            <translation>瞄准</translation>
        </message>
        <message>
            <source>long</source>
            <translation>长台</translation>
        </message>
        <message>
            <source>rail</source>
            <translation>库边</translation>
        </message>
        <message>
            <source>side pocket</source>
            <translation>中袋</translation>
        </message>
        <message>
            <source>position</source>
            <translation>走位</translation>
        </message>
        <message>
            <source>run</source>
            <translation>连续</translation>
        </message>
        <message>
            <source>bank</source>
            <translation>反弹球</translation>
        </message>
        <message>
            <source>kick</source>
            <translation>解球</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>防守</translation>
        </message>
        <message>
            <source>break</source>
            <translation>开球</translation>
        </message>
        <message>
            <source>Jump shots: wear eye protection, keep the space around the table clear, and let nobody stand where the ball may fly.</source>
            <translation>跳球：戴护目镜，清空球台四周，球可能飞向之处不得站人。</translation>
        </message>
        <message>
            <source>Power breaks: balls may leave the table; nobody stands at the foot end, bystanders stay behind the player.</source>
            <translation>大力开球：球可能飞出台面；置球端不站人，旁观者站在球员身后。</translation>
        </message>
        <message>
            <source>cut %1 to the left</source>
            <translation>向左切%1</translation>
        </message>
        <message>
            <source>cut %1 to the right</source>
            <translation>向右切%1</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>距离%1</translation>
        </message>
        <message>
            <source>zone at %1 diamonds along, %2 across</source>
            <translation>区域在纵向%1、横向%2颗星</translation>
        </message>
        <message numerus="yes">
            <source>by way of %n cushion(s)</source>
            <translation>
                <numerusform>经%n库</numerusform>
            </translation>
        </message>
        <message>
            <source>a ball falls</source>
            <translation>有球落袋</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1落袋</translation>
        </message>
        <message numerus="yes">
            <source>%1 by way of %n cushion(s) to %2</source>
            <translation>
                <numerusform>%1经%n库进%2</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1进%2</translation>
        </message>
        <message>
            <source>%1 rests in the zone</source>
            <translation>%1停在区域内</translation>
        </message>
        <message numerus="yes">
            <source>%1 is met by way of %n cushion(s)</source>
            <translation>
                <numerusform>经%n库碰到%1</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 is met first</source>
            <translation>先碰到%1</translation>
        </message>
        <message>
            <source>%1 is hidden from the cue ball</source>
            <translation>%1对母球被遮住</translation>
        </message>
        <message>
            <source>a cut of %1 to %2 is left on %3</source>
            <translation>对%3留下%1到%2的切角</translation>
        </message>
        <message>
            <source>the cue ball meets the cushion at the mark</source>
            <translation>母球碰到库边标记处</translation>
        </message>
        <message>
            <source>the cue ball comes back over its start</source>
            <translation>母球返回经过起点</translation>
        </message>
        <message>
            <source>every ball falls</source>
            <translation>全部落袋</translation>
        </message>
        <message>
            <source>the cue ball touches no cushion</source>
            <translation>母球不碰库</translation>
        </message>
        <message>
            <source>it went as it was called</source>
            <translation>与所报一致</translation>
        </message>
        <message>
            <source>inside</source>
            <translation>区内</translation>
        </message>
        <message>
            <source>%1 outside</source>
            <translation>区外%1</translation>
        </message>
        <message>
            <source>%1 open</source>
            <translation>露出%1</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>切角%1</translation>
        </message>
        <message>
            <source>%1 mm off</source>
            <translation>偏%1 mm</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s)</source>
            <translation>
                <numerusform>%n颗球</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: %2 diamonds along, %3 across</source>
            <translation>%1：纵向%2颗星，横向%3</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>距开球端库边%1</translation>
        </message>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>距置球端库边%1</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>距右侧%1</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>距左侧%1</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>尚无</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1/%2</translation>
        </message>
        <message>
            <source>between %1 and %2 %</source>
            <translation>在%1到%2%之间</translation>
        </message>
        <message>
            <source>%1, %2: not enough yet for a share</source>
            <translation>%1，%2：次数还不够算比例</translation>
        </message>
        <message>
            <source>%1: %2 %, %3</source>
            <translation>%1：%2%，%3</translation>
        </message>
        <message>
            <source>One run more, and the two can be compared.</source>
            <translation>再来一轮就可以比较。</translation>
        </message>
        <message numerus="yes">
            <source>Not enough yet to compare: at least %n try(s) in the last run and in those before.</source>
            <translation>
                <numerusform>还不够比较：最近一轮和之前各轮至少各需%n次。</numerusform>
            </translation>
        </message>
        <message>
            <source>between %1 and %2</source>
            <translation>在%1到%2之间</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): more than chance.</source>
            <translation>最近一轮与之前相差%1个百分点（%2）：不只是偶然。</translation>
        </message>
        <message>
            <source>The last run is as good as those before.</source>
            <translation>最近一轮与之前一样好。</translation>
        </message>
        <message>
            <source>The drill has no set-up; add one.</source>
            <translation>练习没有摆位；请添加。</translation>
        </message>
        <message>
            <source>Nothing is asked; choose what a try is to bring about.</source>
            <translation>没有要求；请选择每次要达成什么。</translation>
        </message>
        <message>
            <source>The set-ups ask different things; give all of them the same kinds of goals.</source>
            <translation>各摆位要求不同；请统一目标种类。</translation>
        </message>
        <message>
            <source>The number of tries must be from 1 to %1.</source>
            <translation>次数必须在1到%1之间。</translation>
        </message>
        <message>
            <source>%1 is asked for but does not lie on the table; put it there.</source>
            <translation>要求%1，但它不在台上；请放上。</translation>
        </message>
        <message>
            <source>A goal lacks its ball, pocket or zone; choose it.</source>
            <translation>有目标缺少球、袋口或区域；请选择。</translation>
        </message>
        <message>
            <source>%1 lies there twice; take one away.</source>
            <translation>%1出现两次；请拿走一颗。</translation>
        </message>
        <message>
            <source>%1 lies off the playing surface; move it.</source>
            <translation>%1在台面之外；请移动。</translation>
        </message>
        <message>
            <source>%1 and %2 overlap; move one of them.</source>
            <translation>%1与%2重叠；请移动其一。</translation>
        </message>
        <message>
            <source>So many balls do not find room so far apart; ask for fewer or let them lie closer.</source>
            <translation>这么多球放不下这么大的间隔；请减少或靠近一些。</translation>
        </message>
        <message>
            <source>A zone lies beyond the cushions; move it.</source>
            <translation>区域超出库边；请移动。</translation>
        </message>
        <message>
            <source>%1 cannot be cut that thinly; move a ball or choose another pocket.</source>
            <translation>%1切不了这么薄；请移动球或换袋口。</translation>
        </message>
        <message>
            <source>The last run differs from those before by %1 points (%2): may be chance.</source>
            <translation>最近一轮与之前相差%1个百分点（%2）：可能是偶然。</translation>
        </message>
        <message>
            <source>So small a difference takes more tries to show than anyone plays.</source>
            <translation>这么小的差别，需要比任何人打的都多的次数才能看出来。</translation>
        </message>
        <message>
            <source>About %1 tries before and as many after would tell.</source>
            <translation>之前和之后各约%1次才能分辨。</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>in diamonds, in mm</comment>
            <translation>%1（%2）</translation>
        </message>
    </context>
    <context>
        <name>EraseWords</name>
        <message>
            <source>Sessions in which nobody else played</source>
            <translation>没有其他人打球的场次</translation>
        </message>
        <message>
            <source>Frames of these sessions</source>
            <translation>这些场次的局</translation>
        </message>
        <message>
            <source>Placed balls of these sessions</source>
            <translation>这些场次中摆放的球</translation>
        </message>
        <message>
            <source>Table fingerprints of these sessions</source>
            <translation>这些场次的球台特征</translation>
        </message>
        <message>
            <source>Seats in sessions with others</source>
            <translation>与他人同场的席位</translation>
        </message>
        <message>
            <source>Shots</source>
            <translation>击球</translation>
        </message>
        <message>
            <source>Places of balls</source>
            <translation>球的位置</translation>
        </message>
        <message>
            <source>Deliveries</source>
            <translation>出杆</translation>
        </message>
        <message>
            <source>Contacts and falls</source>
            <translation>碰撞与落袋</translation>
        </message>
        <message>
            <source>Pocketed balls</source>
            <translation>落袋的球</translation>
        </message>
        <message>
            <source>Tracks</source>
            <translation>轨迹</translation>
        </message>
        <message>
            <source>Rulings</source>
            <translation>判罚</translation>
        </message>
        <message>
            <source>Suggestions</source>
            <translation>建议</translation>
        </message>
        <message>
            <source>Accounts of misses</source>
            <translation>失误分析</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>更正</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>备注</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>标签</translation>
        </message>
        <message>
            <source>Lines of consent</source>
            <translation>同意条目</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>分组</translation>
        </message>
        <message>
            <source>Sessions under way</source>
            <translation>进行中的场次</translation>
        </message>
        <message>
            <source>Notes about others that lose their author's name</source>
            <translation>关于他人、将失去作者姓名的备注</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose their author's name</source>
            <translation>对他人击球、将失去作者姓名的更正</translation>
        </message>
        <message>
            <source>Corrections of others' shots that lose the name</source>
            <translation>对他人击球、将失去此姓名的更正</translation>
        </message>
        <message>
            <source>Rulings on others' shots that lose the name</source>
            <translation>对他人击球、将失去此姓名的判罚</translation>
        </message>
        <message>
            <source>What goes with %1</source>
            <translation>随 %1 一起删除的内容</translation>
        </message>
        <message>
            <source>The player's name, playing hand and whether a minor</source>
            <translation>球员的姓名、惯用手以及是否未成年</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1：%2</translation>
        </message>
        <message>
            <source>Films: the files are yours and are deleted only when you ask for it</source>
            <translation>视频：文件属于您，只有在您要求时才删除</translation>
        </message>
        <message>
            <source>%1 (others play in it too: it stays in the record)</source>
            <translation>%1（其中还有别人打球：保留在记录中）</translation>
        </message>
        <message>
            <source>%1 (the record forgets it)</source>
            <translation>%1（记录不再保留）</translation>
        </message>
        <message>
            <source>Texts of others with the name, which is taken out</source>
            <translation>他人文字中含有此姓名，将被去掉</translation>
        </message>
        <message>
            <source>"%1" becomes "%2"</source>
            <translation>“%1”变为“%2”</translation>
        </message>
        <message>
            <source>Older copies beside the record that hold the name</source>
            <translation>记录旁含有此姓名的旧副本</translation>
        </message>
        <message>
            <source>What stays</source>
            <translation>保留的内容</translation>
        </message>
        <message>
            <source>Others' shots in sessions with this player: %1, with %2 places of balls, which name nobody</source>
            <translation>与此球员同场者的击球：%1，含 %2 个球的位置，不涉及姓名</translation>
        </message>
        <message>
            <source>Consents of others that name this person as giver or writer, as evidence: %1</source>
            <translation>他人的同意中提到此人为给予者或记录者，作为凭据保留：%1</translation>
        </message>
        <message>
            <source>A random number without a name, so that no merge brings the player back</source>
            <translation>一个不含姓名的随机编号，以免合并时又带回此球员</translation>
        </message>
        <message>
            <source>Reports, exports and copies that were made of the record elsewhere</source>
            <translation>在别处生成的报告、导出文件和记录副本</translation>
        </message>
        <message>
            <source>%1 was deleted.</source>
            <translation>%1 已删除。</translation>
        </message>
        <message>
            <source>%1 was not there any more.</source>
            <translation>%1 已经不在。</translation>
        </message>
        <message>
            <source>%1 is another file by now and was left alone.</source>
            <translation>%1 现在已是另一个文件，未作改动。</translation>
        </message>
        <message>
            <source>%1 could not be deleted (%2); delete it yourself.</source>
            <translation>无法删除 %1（%2）；请自行删除。</translation>
        </message>
        <message>
            <source>The record's file could not be written anew, because another program uses it or the disk is full: old pages may still hold the name. Close the other programs and run "ferrule erase --compact" with the same name.</source>
            <translation>记录文件无法重写，因为另一个程序正在使用它或磁盘已满：旧页面可能仍含有此姓名。请关闭其他程序，并用同一姓名运行“ferrule erase --compact”。</translation>
        </message>
        <message>
            <source>The name is nowhere in the record's files any more.</source>
            <translation>记录的文件中已不再有此姓名。</translation>
        </message>
        <message>
            <source>The name, or its letters within other words, still stands in the record's files: %1 times.</source>
            <translation>此姓名（或其他词中的相同字母）仍出现在记录的文件中：%1 次。</translation>
        </message>
        <message>
            <source>%1 was erased.</source>
            <translation>%1 已被清除。</translation>
        </message>
        <message>
            <source>Runs of drills</source>
            <translation>练习轮次</translation>
        </message>
        <message>
            <source>Tries in these runs</source>
            <translation>这些轮次中的尝试</translation>
        </message>
    </context>
    <context>
        <name>ErrorSentence</name>
        <message>
            <source>%1 is a folder; choose a file in it.</source>
            <translation>%1是文件夹；请选择其中的文件。</translation>
        </message>
        <message>
            <source>%1 cannot be read (%2); check its permissions.</source>
            <translation>无法读取%1（%2）；请检查访问权限。</translation>
        </message>
        <message>
            <source>%1 has an unusable value for "%2"; correct it.</source>
            <translation>%1中“%2”的值不可用；请改正。</translation>
        </message>
        <message>
            <source>%1 gives %3 for "%2", outside %4 to %5; measure it again.</source>
            <translation>%1给出的“%2”为%3，超出%4至%5；请重新测量。</translation>
        </message>
        <message>
            <source>%1 is %2 but %3 was made at %4; calibrate the rig on a film of this size.</source>
            <translation>%1为%2，而%3是按%4建立的；请用这一尺寸的视频标定机位。</translation>
        </message>
        <message>
            <source>%1 is %2 but the lens %3 was made at %4, another shape of picture; calibrate the lens in the film's mode.</source>
            <translation>%1为%2，而镜头%3是按%4标定的，画面比例不同；请按该视频的拍摄模式标定镜头。</translation>
        </message>
        <message>
            <source>The board "%1" needs 3 to 100 columns and rows, such as 9x6; count them on the print.</source>
            <translation>标定板“%1”需要3至100的列数和行数，例如9x6；请在打印件上数一数。</translation>
        </message>
        <message>
            <source>The board "%1" needs its square's side in millimetres, 1 to 1000; measure it on the print.</source>
            <translation>标定板“%1”需要方格边长（毫米），1至1000；请在打印件上量出。</translation>
        </message>
        <message>
            <source>The board "%1" needs its marker's side in millimetres, smaller than the square; measure it on the print.</source>
            <translation>标定板“%1”需要码的边长（毫米），须小于方格；请在打印件上量出。</translation>
        </message>
        <message>
            <source>The board "%1" names an unknown set of markers; use the name it was printed with, such as DICT_5X5_100.</source>
            <translation>标定板“%1”所写的码字典未知；请使用打印时的名称，例如DICT_5X5_100。</translation>
        </message>
        <message>
            <source>The board "%1" has more squares than its set of markers can fill; check the counts or name a larger set.</source>
            <translation>标定板“%1”的方格数超出其码字典所能填满的数量；请检查格数或换用更大的字典。</translation>
        </message>
        <message>
            <source>"%1" does not fit on this paper with its margins; choose larger paper or smaller squares.</source>
            <translation>“%1”加上页边距后放不进这张纸；请选更大的纸或更小的方格。</translation>
        </message>
        <message>
            <source>The printer drew the board "%1" %2 mm across and %3 mm down where both should be equal; print it again without fitting it to the page.</source>
            <translation>打印机把标定板“%1”打成横向%2 mm、纵向%3 mm，两者本应相等；请不要按页面缩放，重新打印。</translation>
        </message>
        <message>
            <source>The board "%1" is not in the form chessboard:9x6:25 or charuco:8x6:40:30:DICT_5X5_100; write it so.</source>
            <translation>标定板“%1”的写法应为chessboard:9x6:25或charuco:8x6:40:30:DICT_5X5_100；请照此书写。</translation>
        </message>
        <message>
            <source>(%1 % of the cells there, %2 % are needed); add stills with the board there.</source>
            <translation>（该处网格覆盖%1%，需要%2%）；请补拍标定板位于该处的照片。</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the left of the picture %2</source>
            <translation>%1的照片中，标定板很少出现在画面左侧%2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board on the right of the picture %2</source>
            <translation>%1的照片中，标定板很少出现在画面右侧%2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the top of the picture %2</source>
            <translation>%1的照片中，标定板很少出现在画面上方%2</translation>
        </message>
        <message>
            <source>The stills of %1 hardly show the board at the bottom of the picture %2</source>
            <translation>%1的照片中，标定板很少出现在画面下方%2</translation>
        </message>
        <message>
            <source>The stills of %1 show the board in too little of the picture (%2 %, %3 % are needed); add stills with the board in the empty parts.</source>
            <translation>%1的照片中，标定板覆盖的画面太少（%2%，需要%3%）；请补拍标定板位于空白部分的照片。</translation>
        </message>
        <message>
            <source>The cushions in %1 fit no camera over this table; check the table's size in the table file.</source>
            <translation>%1中的库边与这张球台上方的任何相机位置都不符；请检查球台文件中的尺寸。</translation>
        </message>
        <message>
            <source>No lens explains the stills of %1; check the board's counts and take stills with the board tilted.</source>
            <translation>没有镜头能解释%1的照片；请检查标定板的格数，并补拍标定板倾斜的照片。</translation>
        </message>
        <message>
            <source>The stills of %1 do not fix the lens out to the corners of the picture; add stills with the board in the corners.</source>
            <translation>%1的照片不足以确定直到画面四角的镜头畸变；请补拍标定板位于四角的照片。</translation>
        </message>
        <message>
            <source>%1 holds a lens that cannot be used (%2); calibrate it again.</source>
            <translation>%1中的镜头不可用（%2）；请重新标定。</translation>
        </message>
        <message>
            <source>%1 lists %2 tags and %3 are needed; measure the tags into a table file, or set up from the table itself.</source>
            <translation>%1列出%2个标记，需要%3个；请量好标记写入球台文件，或直接用球台本身设置。</translation>
        </message>
        <message>
            <source>%1 shows the noses of %2 cushions, and every side of the table is needed; film the whole table from above, in even light, without people before it.</source>
            <translation>%1中能看到%2条库边前沿，需要球台的每一边；请从上方拍下整张球台，光线均匀，不要有人遮挡。</translation>
        </message>
        <message>
            <source>%1 shows %2 of the projected tags on the cloth and %3 are needed; darken the room, clear the table, and let the projector's picture cover most of it.</source>
            <translation>%1中能看到台呢上%2个投影标记，需要%3个；请调暗房间，清空台面，并让投影画面盖住大部分台面。</translation>
        </message>
        <message>
            <source>%1 shows %2 of the table's tags and %3 are needed; uncover or light them, and check the set of markers in the table file.</source>
            <translation>%1中能看到球台的%2个标记，需要%3个；请移开遮挡或补光，并检查球台文件中的码字典。</translation>
        </message>
        <message>
            <source>%1 shows tag %2 twice; cover or remove one of them.</source>
            <translation>%1中标记%2出现了两次；请遮住或移走其中一个。</translation>
        </message>
        <message>
            <source>%1 shows the projected tag %2 twice; switch off the second projector or the other grid.</source>
            <translation>%1中投影标记%2出现了两次；请关闭另一台投影仪或另一张网格。</translation>
        </message>
        <message>
            <source>The projected tags in %1 do not lie as one picture on a flat cloth (%2 mm off); check that the grid file belongs to the picture that was sent, and that camera and projector stood still.</source>
            <translation>%1中的投影标记不像平整台呢上的同一幅画面（相差%2 mm）；请检查网格文件与所投画面是否对应，相机和投影仪是否未动。</translation>
        </message>
        <message>
            <source>%1 shows tags %2 and %3 in each other's place; swap them, or correct the table file.</source>
            <translation>%1中标记%2和%3互相放错了位置；请对调，或改正球台文件。</translation>
        </message>
        <message>
            <source>%1 shows tag %2 turned by %3 degrees from what the table file says; turn it, or correct the file.</source>
            <translation>%1中标记%2的朝向与球台文件相差%3°；请转正标记，或改正文件。</translation>
        </message>
        <message>
            <source>%1 shows tag %2 about %3 mm from where the table file says; measure it again, and check that the lens belongs to this camera.</source>
            <translation>%1中标记%2距球台文件所写的位置约%3 mm；请重新测量，并检查镜头是否属于这台相机。</translation>
        </message>
        <message>
            <source>%1 shows tags that fit no camera position; check the table file and the lens.</source>
            <translation>%1中的标记与任何相机位置都不符；请检查球台文件和镜头。</translation>
        </message>
        <message>
            <source>the turn of the picture</source>
            <translation>画面旋转</translation>
        </message>
        <message>
            <source>the image size</source>
            <translation>图像尺寸</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>镜头</translation>
        </message>
        <message>
            <source>the camera's place</source>
            <translation>相机位置</translation>
        </message>
        <message>
            <source>There is no file %1; check the path.</source>
            <translation>没有文件%1；请检查路径。</translation>
        </message>
        <message>
            <source>%1 is empty; copy or export it again.</source>
            <translation>%1是空文件；请重新复制或导出。</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another folder.</source>
            <translation>无法写入%1（%2）；请选择其他文件夹。</translation>
        </message>
        <message>
            <source>%1 is not in the expected form (%2); make it again or correct it.</source>
            <translation>%1的格式不符（%2）；请重新生成或改正。</translation>
        </message>
        <message>
            <source>%1 has no value for "%2"; add it.</source>
            <translation>%1缺少“%2”的值；请补上。</translation>
        </message>
        <message>
            <source>%1 is not a film that can be read; export it again as MP4 or MKV.</source>
            <translation>%1不是可读取的视频；请重新导出为MP4或MKV。</translation>
        </message>
        <message>
            <source>%1 holds sound but no picture; choose the film itself.</source>
            <translation>%1只有声音没有画面；请选择视频本身。</translation>
        </message>
        <message>
            <source>%1 breaks off before its first whole image; copy it from the camera again.</source>
            <translation>%1在第一帧完整图像之前就中断了；请从相机重新复制。</translation>
        </message>
        <message>
            <source>%1 is not a picture that can be read; leave it out or export it again as JPEG or PNG.</source>
            <translation>%1不是可读取的图片；请去掉它，或重新导出为JPEG或PNG。</translation>
        </message>
        <message>
            <source>%1 is %2 while the stills before it are %3; use stills of one camera at one size.</source>
            <translation>%1为%2，而之前的照片为%3；请使用同一台相机、同一尺寸的照片。</translation>
        </message>
        <message>
            <source>Every still that shows the board "%1" is blurred; focus, expose shorter or put the board down, and take them again.</source>
            <translation>拍到标定板“%1”的照片全都模糊；请对好焦、缩短曝光或把标定板放稳，重新拍摄。</translation>
        </message>
        <message>
            <source>None of %2 stills shows the whole board "%1"; check its counts and keep it flat, sharp and in the picture.</source>
            <translation>%2张照片中没有一张拍全标定板“%1”；请检查格数，并保持标定板平整、清晰、完整入画。</translation>
        </message>
        <message>
            <source>The stills show the board "%1" in the old layout, with the markers on the other squares; print it again, or use one with an odd number of rows.</source>
            <translation>照片中的标定板“%1”是旧版式，码位于另一色方格上；请重新打印，或使用行数为奇数的标定板。</translation>
        </message>
        <message>
            <source>The grid in %1 is mirrored; switch off the projector's mirror or rear setting.</source>
            <translation>%1中的网格是镜像的；请关闭投影仪的镜像或背投设置。</translation>
        </message>
        <message>
            <source>%1 is mirrored; switch off the mirror setting of the camera and film again.</source>
            <translation>%1是镜像的；请关闭相机的镜像设置，重新拍摄。</translation>
        </message>
        <message>
            <source>Only %2 stills show the board %1 well enough and %3 are needed; take more.</source>
            <translation>只有%2张照片足够清楚地拍到标定板%1，需要%3张；请再拍一些。</translation>
        </message>
        <message>
            <source>%1 corrects %2 twice; make the rig again from the film and the lens as they came.</source>
            <translation>%1对%2校正了两次；请用未经处理的视频和镜头重建机位。</translation>
        </message>
        <message>
            <source>No balls were found in %1; check that the rig and the table file belong to this film.</source>
            <translation>%1中没有找到球；请检查机位和球台文件是否属于这段视频。</translation>
        </message>
        <message>
            <source>%1 is in use by another program; close it there and try again.</source>
            <translation>%1正被其他程序使用；请在那里关闭后重试。</translation>
        </message>
        <message>
            <source>%1 may only be read; copy it to a folder of your own.</source>
            <translation>%1为只读；请复制到自己的文件夹。</translation>
        </message>
        <message>
            <source>%1 may only be read (%2); copy it to a folder of your own.</source>
            <translation>%1为只读（%2）；请复制到自己的文件夹。</translation>
        </message>
        <message>
            <source>%1 was written by a later version (form %2, this one knows %3); update this program.</source>
            <translation>%1由更新的版本写成（格式%2，本版支持%3）；请更新本程序。</translation>
        </message>
        <message>
            <source>%1 is not a record; choose another file.</source>
            <translation>%1不是记录；请选择其他文件。</translation>
        </message>
        <message>
            <source>%1 is not a record (%2); choose another file.</source>
            <translation>%1不是记录（%2）；请选择其他文件。</translation>
        </message>
        <message>
            <source>There is no room left to write %1; free some disk space. Nothing that was saved is lost.</source>
            <translation>没有空间写入%1；请腾出磁盘空间。已保存的内容没有丢失。</translation>
        </message>
        <message>
            <source>%1 is damaged (%2); open the newest backup beside it.</source>
            <translation>%1已损坏（%2）；请打开旁边最新的备份。</translation>
        </message>
        <message>
            <source>%1 is already in the record; choose another name.</source>
            <translation>%1已在记录中；请换一个名称。</translation>
        </message>
        <message>
            <source>%1 is already in the record as session "%2"; add --again to measure it once more beside it.</source>
            <translation>%1已作为场次“%2”在记录中；加上--again可再测一次，与原结果并存。</translation>
        </message>
        <message>
            <source>%1 leaves no legal shot: no ball that may be played is on the table or can be reached; check the balls, the game and the group.</source>
            <translation>%1中没有合法的打法：台上没有可打的球，或都打不到；请检查球、项目和球组。</translation>
        </message>
        <message>
            <source>There is no %1 in %2; check the spelling.</source>
            <translation>%2中没有%1；请检查拼写。</translation>
        </message>
        <message>
            <source>%1 strikes the ball %2 radii from its centre, past the miscue limit of %3; move the tip point inward.</source>
            <translation>%1的击点距球心%2个球半径，超出滑杆极限%3；请将击点移向球心。</translation>
        </message>
        <message>
            <source>%1 has the balls %2 overlapping by %3 mm, more than %4; correct their places.</source>
            <translation>%1中球%2重叠了%3 mm，超过%4；请改正位置。</translation>
        </message>
        <message>
            <source>%1 has the ball %2 outside the table; correct its place.</source>
            <translation>%1中球%2在球台之外；请改正位置。</translation>
        </message>
        <message>
            <source>Stopped before the end; what was recorded until then is kept.</source>
            <translation>未完成即停止；此前已记录的内容会保留。</translation>
        </message>
    </context>
    <context>
        <name>FigureWords</name>
        <message>
            <source>not enough yet: two sessions with %1 or more are needed</source>
            <translation>数据不足：需要两场各有%1或更多</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>瞄准散布</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>重复球形中的力度散布</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>力度散布</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>出杆分布图</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>失误分布图</translation>
        </message>
        <message>
            <source>Which side it misses</source>
            <translation>未进球的厚薄</translation>
        </message>
        <message>
            <source>Made by pocket</source>
            <translation>各袋口进球率</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>球速：要求与实际</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>母球停位</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>击点位置</translation>
        </message>
        <message>
            <source>Like shots under other conditions</source>
            <translation>不同条件下难度相当的球</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>练习：%1</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>练习</translation>
        </message>
        <message>
            <source>no run of a drill in this selection</source>
            <translation>此选择中没有练习记录</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>选择与出杆</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>为下一颗球的走位</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>预测机会与实际结果</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>比赛</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>防守及其后</translation>
        </message>
        <message>
            <source>no safety in this selection</source>
            <translation>此选择中没有防守</translation>
        </message>
        <message>
            <source>Made by the way into the pocket</source>
            <translation>按进袋方向的进球率</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>进球率：按切角与母球距离</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>进球率：按切角与到袋口的距离</translation>
        </message>
    </context>
    <context>
        <name>FilmWords</name>
        <message>
            <source>No film is kept: the consent of %1 to being filmed has run out; note a new one in Players.</source>
            <translation>不保存视频：%1的拍摄同意已过期；请在“球员”中记下新的同意。</translation>
        </message>
        <message>
            <source>No film is kept: %1 has withdrawn the consent to being filmed.</source>
            <translation>不保存视频：%1已撤回拍摄同意。</translation>
        </message>
        <message>
            <source>No film is kept: for %1, a minor, a guardian must consent; note it in Players.</source>
            <translation>不保存视频：%1是未成年人，须由监护人同意；请在“球员”中记下。</translation>
        </message>
        <message>
            <source>No film is kept: no consent of %1 to being filmed is noted in Players.</source>
            <translation>不保存视频：“球员”中没有%1的拍摄同意。</translation>
        </message>
        <message>
            <source>No film is kept: name those who play, so that their consent can be looked up.</source>
            <translation>不保存视频：请填写打球者姓名，以便查看其同意。</translation>
        </message>
        <message>
            <source>No film is kept: these players' consents to being filmed are missing or no longer hold: %1.</source>
            <translation>不保存视频：以下球员的拍摄同意缺失或已失效：%1。</translation>
        </message>
        <message>
            <source>No film is kept: %1</source>
            <comment>a sentence</comment>
            <translation>不保存视频：%1</translation>
        </message>
        <message>
            <source>The film ended after %1 images: the disk has no room for more. Measuring goes on.</source>
            <translation>视频在%1帧后结束：磁盘空间不足。测量继续。</translation>
        </message>
        <message>
            <source>Filming: %1 images, none dropped</source>
            <translation>正在拍摄：%1帧，无丢弃</translation>
        </message>
        <message>
            <source>Filming: %1 images, %2 dropped</source>
            <translation>正在拍摄：%1帧，丢弃%2帧</translation>
        </message>
    </context>
    <context>
        <name>FirstPage</name>
        <message>
            <source>There is no shot of this player in this period, so there is nothing to report. Choose another period, or measure a film first.</source>
            <translation>这一时段没有该球员的击球，因此没有可报告的内容。请选择其他时段，或先测量一段视频。</translation>
        </message>
        <message>
            <source>In short</source>
            <translation>概要</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1至%2</translation>
        </message>
        <message>
            <source>from %1</source>
            <translation>自%1起</translation>
        </message>
        <message>
            <source>until %1</source>
            <translation>至%1止</translation>
        </message>
        <message>
            <source>the whole record</source>
            <translation>全部记录</translation>
        </message>
        <message>
            <source>Progress report</source>
            <translation>进步报告</translation>
        </message>
        <message>
            <source>%1 hours</source>
            <translation>%1小时</translation>
        </message>
        <message>
            <source>How many balls go in cannot be said yet (%1).</source>
            <translation>目前还无法判断进球率（%1）。</translation>
        </message>
        <message>
            <source>Whether anything changed cannot be said yet: that takes at least %1 with enough shots.</source>
            <translation>目前还无法判断是否有变化：至少需要%1，且每场杆数足够。</translation>
        </message>
        <message>
            <source>Over these weeks nothing changed by more than luck alone would bring about. That is usual for so short a time and no verdict on the practice.</source>
            <translation>这几周没有超出偶然的变化。这么短的时间里这很正常，并不否定训练的效果。</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>数据还不够，无法说明先练什么；每多一场都有帮助。</translation>
        </message>
        <message>
            <source>To work on first: %1. The drill is “%2”.</source>
            <translation>首先要下功夫的：%1。对应练习：“%2”。</translation>
        </message>
        <message>
            <source>What we can be sure of</source>
            <translation>可以确定的</translation>
        </message>
        <message>
            <source>Nothing stands out beyond luck in this period.</source>
            <translation>这一时段没有超出偶然的情况。</translation>
        </message>
        <message>
            <source>Also looked at, and no more than luck: %1.</source>
            <translation>也检查过、但未超出偶然：%1。</translation>
        </message>
        <message>
            <source>Not enough shots or sessions yet: %1.</source>
            <translation>击球或场次还不够：%1。</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>要练什么</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>Drill: %1. %2</source>
            <translation>练习：%1。%2</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>本项与下一项大致相当，先练哪一项都可以。</translation>
        </message>
        <message>
            <source>The order is by frames won: the player's own shots are played again in the simulator, with one part of the scatter a fifth smaller. A simulation is a guide, not a promise.</source>
            <translation>排序按可多赢的局数：在模拟器中重打该球员自己的击球，并将散布的某一部分减小五分之一。模拟只作参考，不是保证。</translation>
        </message>
        <message>
            <source>The order comes from a simple rule: the lines on which the balls ran are judged again with one cause taken away. Position, speed and choice of shot are not judged by it.</source>
            <translation>排序按一条简单规则：去掉某一个原因后，重新评判各球的走线。走位、力度和打法选择不在评判之列。</translation>
        </message>
        <message>
            <source>How far to trust this</source>
            <translation>可信程度</translation>
        </message>
        <message>
            <source>Every one of these shots was corrected by a person; nothing rests on the camera alone.</source>
            <translation>这些击球每一杆都经人工更正；没有一项只凭相机。</translation>
        </message>
        <message>
            <source>Still waiting for a person's word: %1.</source>
            <translation>仍待人工确认：%1。</translation>
        </message>
        <message>
            <source>The pocket was named by a person for %1 pots and read from the balls for %2; the two are not mixed.</source>
            <translation>进攻球中，袋口由人工指定的有%1颗，由球路判读的有%2颗；两者不混合统计。</translation>
        </message>
        <message>
            <source>Left out: %1 on the table “%2”, whose pockets are of another width (%3 mm at the corners).</source>
            <translation>未计入：球台“%2”上的%1，其袋口宽度不同（角袋%3 mm）。</translation>
        </message>
        <message>
            <source>Dated in the future: %1; set the clock of the camera or computer.</source>
            <translation>日期在未来：%1；请校准相机或电脑的时钟。</translation>
        </message>
        <message>
            <source>A clock went back during a session (%1); times within sessions are doubtful.</source>
            <translation>场次进行中时钟曾倒退（%1）；场次内的时间不可靠。</translation>
        </message>
        <message>
            <source>For %1 the time within the session is unknown.</source>
            <translation>有%1在场次内的时间未知。</translation>
        </message>
        <message>
            <source>The coach's note</source>
            <translation>教练评语</translation>
        </message>
        <message>
            <source>met</source>
            <translation>已达成</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>尚未达成</translation>
        </message>
        <message>
            <source>not tried since</source>
            <translation>此后未练</translation>
        </message>
        <message>
            <source>%1; now %2</source>
            <comment>met or not yet, spread</comment>
            <translation>%1；现在%2</translation>
        </message>
        <message>
            <source>%1; since then %2 of %3 (between %4)</source>
            <comment>met or not yet, tries that met it, tries, interval</comment>
            <translation>%1；此后%3次中%2次（区间%4）</translation>
        </message>
        <message>
            <source>Targets of the time before</source>
            <translation>上一阶段的目标</translation>
        </message>
        <message>
            <source>%1 of %2 at “%3”</source>
            <translation>“%3”%2次中%1次</translation>
        </message>
        <message>
            <source>scatter of %1 or less</source>
            <translation>散布不超过%1</translation>
        </message>
        <message>
            <source>The targets are those that a report on the first day of this period would have set.</source>
            <translation>这些目标是本阶段第一天的报告会定下的目标。</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a count, its share</comment>
            <translation>%1（%2）</translation>
        </message>
        <message>
            <source>Shots whose stroke was measured: %1. Not seen well enough: %2. Corrected by a person: %3.</source>
            <comment>each a count and its share</comment>
            <translation>测得的击球：%1。看不清的：%2。经人工更正的：%3。</translation>
        </message>
        <message>
            <source>Many shots were corrected by a person; look at the camera before the next session.</source>
            <translation>许多击球经人工更正；下一场之前请检查相机。</translation>
        </message>
        <message>
            <source>No consent is recorded for: %1.</source>
            <translation>以下项目未取得同意：%1。</translation>
        </message>
        <message>
            <source>What the record knew of consent on %1:</source>
            <translation>截至%1记录的同意情况：</translation>
        </message>
        <message>
            <source>Of every 100 balls that were tried, about %1 went in. Luck and good and bad days allowed for, the true number very probably lies between %2 and %3.</source>
            <translation>每尝试100颗球，约进%1颗。计入偶然因素和状态起伏，真实数字很可能在%2与%3之间。</translation>
        </message>
    </context>
    <context>
        <name>Joining</name>
        <message>
            <source>%1, %2</source>
            <comment>two of a list</comment>
            <translation>%1，%2</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>two of a list whose parts hold commas</comment>
            <translation>%1；%2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a name and what is told of it</comment>
            <translation>%1：%2</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>two sentences</comment>
            <translation>%1%2</translation>
        </message>
        <message>
            <source>%1.</source>
            <comment>the stop at the end of a sentence</comment>
            <translation>%1。</translation>
        </message>
    </context>
    <context>
        <name>JudgementSection</name>
        <message>
            <source>Shot</source>
            <translation>打法</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>进球率</translation>
        </message>
        <message>
            <source>Foul</source>
            <translation>犯规</translation>
        </message>
        <message>
            <source>Worth</source>
            <comment>of a shot, in hundredths of a frame</comment>
            <translation>价值</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>瞄准</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>球速</translation>
        </message>
        <message>
            <source>Side / height, R</source>
            <translation>左右/高低，R</translation>
        </message>
        <message>
            <source>The suggestion had been shown before the shot.</source>
            <translation>出杆之前已显示过建议。</translation>
        </message>
        <message>
            <source>Squirt</source>
            <translation>侧偏（squirt）</translation>
        </message>
        <message>
            <source>Swerve</source>
            <translation>弧线（swerve）</translation>
        </message>
        <message>
            <source>Throw of the cut</source>
            <translation>切球带偏（throw）</translation>
        </message>
        <message>
            <source>Throw of the spin</source>
            <translation>加塞带偏（throw）</translation>
        </message>
        <message>
            <source>Unexplained</source>
            <translation>原因不明</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>合计</translation>
        </message>
    </context>
    <context>
        <name>JudgementSentence</name>
        <message>
            <source>what came out was %1 in 100 better than the shot is worth</source>
            <translation>实际结果比这一杆的价值高百分之%1</translation>
        </message>
        <message>
            <source>delivery cost %1 in 100</source>
            <translation>出杆损失百分之%1</translation>
        </message>
        <message>
            <source>The choice cost nothing that can be told</source>
            <translation>选择没有可分辨的损失</translation>
        </message>
        <message>
            <source>The choice gained %1 in 100</source>
            <translation>选择多得百分之%1</translation>
        </message>
        <message>
            <source>The choice cost %1 in 100</source>
            <translation>选择损失百分之%1</translation>
        </message>
        <message>
            <source>No game is known for this shot, so that no plan can be set beside it.</source>
            <translation>这一杆的比赛项目未知，因此没有建议可以对照。</translation>
        </message>
        <message>
            <source>The frame was over.</source>
            <translation>本局已经结束。</translation>
        </message>
        <message>
            <source>Where the cue ball lay before the shot is not known.</source>
            <translation>出杆前母球的位置未知。</translation>
        </message>
        <message>
            <source>No legal shot was found from this position.</source>
            <translation>从这一球形没有找到合法的打法。</translation>
        </message>
        <message>
            <source>%1; %2.</source>
            <comment>what the choice cost; what the delivery cost</comment>
            <translation>%1；%2。</translation>
        </message>
        <message>
            <source>Suggested: %1. What was taken could not be matched to a plan.</source>
            <translation>建议：%1。实打无法对应到任何一种打法。</translation>
        </message>
    </context>
    <context>
        <name>LiveWords</name>
        <message>
            <source>Waiting for the first image</source>
            <translation>等待第一帧图像</translation>
        </message>
        <message>
            <source>What was seen is measured to its end</source>
            <translation>正在测完已看到的内容</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand in the record</source>
            <translation>
                <numerusform>记录中有 %n 杆</numerusform>
            </translation>
        </message>
        <message>
            <source>Practice without a referee</source>
            <translation>无裁判练习</translation>
        </message>
        <message>
            <source>Waiting for the first shot</source>
            <translation>等待第一杆</translation>
        </message>
        <message>
            <source>%1, as far as anyone knows</source>
            <comment>whose turn it is</comment>
            <translation>%1（据目前所知）</translation>
        </message>
        <message>
            <source>Frames: %1 %2, %3 %4</source>
            <comment>name, frames, name, frames</comment>
            <translation>局分：%1 %2，%3 %4</translation>
        </message>
        <message>
            <source>%1 images</source>
            <comment>a number that grows</comment>
            <translation>%1 帧图像</translation>
        </message>
        <message>
            <source>none dropped</source>
            <translation>无丢弃</translation>
        </message>
        <message numerus="yes">
            <source>%n dropped</source>
            <translation>
                <numerusform>丢弃 %n 帧</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the picture is %n image(s) behind</source>
            <translation>
                <numerusform>画面落后 %n 帧</numerusform>
            </translation>
        </message>
        <message>
            <source>The picture is too dark: put more light on the table, or let the camera expose longer.</source>
            <translation>画面太暗：增加球台照明，或延长相机曝光。</translation>
        </message>
        <message>
            <source>Part of the picture is burnt out: dim the lamps, or let the camera expose for a shorter time.</source>
            <translation>画面部分过曝：调暗灯光，或缩短相机曝光。</translation>
        </message>
        <message>
            <source>Fast balls become streaks: the camera exposes about %1 ms; with more light it can be shorter.</source>
            <translation>快速球拖影：相机曝光约%1毫秒；光线更足时可以缩短。</translation>
        </message>
        <message>
            <source>Rig not checked at %1: %2</source>
            <comment>time, why</comment>
            <translation>机位在%1未能检查：%2</translation>
        </message>
        <message>
            <source>Rig checked at %1: it fits.</source>
            <translation>机位在%1检查过：吻合。</translation>
        </message>
        <message>
            <source>Rig checked at %1: %2</source>
            <comment>time, what is wrong</comment>
            <translation>机位在%1检查过：%2</translation>
        </message>
    </context>
    <context>
        <name>MarkWords</name>
        <message>
            <source>the %1 pocket</source>
            <comment>a pocket's place</comment>
            <translation>%1</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the left rail, from the head</source>
            <translation>左侧木边第%1个标记点（共%2个，从开球端数）</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the right rail, from the head</source>
            <translation>右侧木边第%1个标记点（共%2个，从开球端数）</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the foot rail, from the left</source>
            <translation>置球端木边第%1个标记点（共%2个，从左数）</translation>
        </message>
        <message>
            <source>sight %1 of %2 on the head rail, from the left</source>
            <translation>开球端木边第%1个标记点（共%2个，从左数）</translation>
        </message>
    </context>
    <context>
        <name>MeasuringWords</name>
        <message>
            <source>aim %1</source>
            <translation>瞄准 %1</translation>
        </message>
        <message>
            <source>aim and speed not observable</source>
            <translation>瞄准与球速无法观察</translation>
        </message>
        <message>
            <source>less than a minute left</source>
            <translation>剩余不到一分钟</translation>
        </message>
        <message numerus="yes">
            <source>about %n minute(s) left</source>
            <translation>
                <numerusform>约剩 %n 分钟</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>about %n hour(s) left</source>
            <translation>
                <numerusform>约剩 %n 小时</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one</source>
            <translation>正在为每一杆寻找建议</translation>
        </message>
        <message>
            <source>Opening the film</source>
            <translation>正在打开视频</translation>
        </message>
        <message>
            <source>Image %1</source>
            <translation>图像 %1</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>how far, time left</comment>
            <translation>%1；%2</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) measured in %1 of film.</source>
            <translation>
                <numerusform>在 %1 的视频中测得 %n 杆。</numerusform>
            </translation>
        </message>
        <message>
            <source>The film is shorter than its header says; what is there counts.</source>
            <translation>视频比其文件头所示更短；以实际内容为准。</translation>
        </message>
        <message numerus="yes">
            <source>The camera moved %n time(s): shots during a move are doubtful.</source>
            <translation>
                <numerusform>相机移动了 %n 次：移动期间的杆数据存疑。</numerusform>
            </translation>
        </message>
        <message>
            <source>Read with what session "%1" told of this table.</source>
            <translation>按场次“%1”得知的球台特性读取。</translation>
        </message>
        <message>
            <source>It stands beside session "%1", which holds the same film.</source>
            <translation>它与包含同一视频的场次“%1”并列。</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) stand beside what would have been suggested.</source>
            <translation>
                <numerusform>%n 杆旁已附上当时的建议。</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Stopped. %n shot(s) stand in session "%1", whose frame counts as incomplete; the film can be measured again from its start at any time.</source>
            <translation>
                <numerusform>已停止。场次“%1”中保留 %n 杆，该局视为未完成；视频可随时从头重新测量。</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>This film was measured before: session "%1" holds its %n shot(s).</source>
            <translation>
                <numerusform>此视频已测量过：场次“%1”含其 %n 杆。</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Measuring this film was broken off: session "%1" holds its first %n shot(s). Measured again, it becomes a session of its own beside that one.</source>
            <translation>
                <numerusform>此视频的测量曾中断：场次“%1”含其前 %n 杆。重新测量将成为与之并列的独立场次。</numerusform>
            </translation>
        </message>
        <message>
            <source>Looking for the shot to suggest beside each one, %1</source>
            <comment>share</comment>
            <translation>正在为每一杆寻找建议，%1</translation>
        </message>
        <message>
            <source>Checking that film and rig belong together</source>
            <translation>正在检查视频和机位是否相符</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by up to %1 mm.</source>
            <translation>照此下去，球的位置最多会偏差%1毫米。</translation>
        </message>
    </context>
    <context>
        <name>MergeSentence</name>
        <message>
            <source>Nothing of it was new.</source>
            <translation>其中没有新内容。</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s)</source>
            <translation>
                <numerusform>%n名球员</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n次活动</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n杆</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n drill run(s)</source>
            <translation>
                <numerusform>%n轮练习</numerusform>
            </translation>
        </message>
        <message>
            <source>New: %1.</source>
            <comment>a list of counts</comment>
            <translation>新增：%1。</translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) had been corrected or gone on with there and are now as there.</source>
            <translation>
                <numerusform>%n局在那边被更正或继续过，现在与那边一致。</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n frame(s) were changed in both records and stay as they are here.</source>
            <translation>
                <numerusform>%n局在两份记录中都有改动，保持此处的样子。</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of the other record is called %2 here; if both are one person, join them in Players.</source>
            <translation>另一份记录中的%1在此称为%2；若是同一人，请在“球员”中合并。</translation>
        </message>
        <message numerus="yes">
            <source>%n player(s) who were erased here were left out.</source>
            <translation>
                <numerusform>%n名在此已删除的球员未并入。</numerusform>
            </translation>
        </message>
        <message>
            <source>Erased there, and still here: %1.</source>
            <translation>那边已删除、此处仍在：%1。</translation>
        </message>
    </context>
    <context>
        <name>MissSentence</name>
        <message>
            <source>Missed %1 by %2 (%3 at the pocket).</source>
            <translation>未进，%1%2（袋口处%3）。</translation>
        </message>
        <message>
            <source>The line was %1 off the middle of the pocket.</source>
            <translation>走线偏离袋口中心%1。</translation>
        </message>
        <message>
            <source>It rattled in the jaws.</source>
            <translation>球在袋角晃了出来。</translation>
        </message>
        <message>
            <source>the aim was %1 %2 of the ghost ball</source>
            <translation>瞄准相对假想球%2%1</translation>
        </message>
        <message>
            <source>squirt made it %1 %2</source>
            <translation>母球侧偏使走线%2%1</translation>
        </message>
        <message>
            <source>swerve made it %1 %2</source>
            <translation>弧线使走线%2%1</translation>
        </message>
        <message>
            <source>throw of the cut made it %1 %2</source>
            <translation>切球带偏使走线%2%1</translation>
        </message>
        <message>
            <source>throw of the side spin made it %1 %2</source>
            <translation>加塞带偏使走线%2%1</translation>
        </message>
        <message>
            <source>the speed made it %1 %2</source>
            <translation>力度使走线%2%1</translation>
        </message>
        <message>
            <source>%1 %2 stays unexplained</source>
            <translation>另有%2%1原因不明</translation>
        </message>
        <message>
            <source>The film does not tell what brought it there.</source>
            <translation>视频看不出是什么造成的。</translation>
        </message>
        <message>
            <source>the cue ball was not seen for long enough</source>
            <translation>母球可见时间不够长</translation>
        </message>
        <message>
            <source>no stroke that can be simulated goes this way</source>
            <translation>没有可模拟的出杆会这样走</translation>
        </message>
        <message>
            <source>no cushion, no curve: side spin cannot be seen</source>
            <translation>没有碰库，也没有弧线：看不出塞</translation>
        </message>
        <message>
            <source>side spin did too little to be seen</source>
            <translation>塞的作用太小，看不出来</translation>
        </message>
        <message>
            <source>the slide was too short to tell the height of the tip</source>
            <translation>滑动太短，看不出击点高低</translation>
        </message>
        <message>
            <source>no hop, no curve: the cue's elevation cannot be seen</source>
            <translation>没有跳起，也没有弧线：看不出抬杆角</translation>
        </message>
        <message>
            <source>the film begins with balls in motion</source>
            <translation>视频开始时球已在动</translation>
        </message>
        <message>
            <source>the film ends before every ball rests</source>
            <translation>视频在球全部静止之前结束</translation>
        </message>
        <message>
            <source>the next strike came before every ball rested</source>
            <translation>球全部静止之前已出下一杆</translation>
        </message>
        <message>
            <source>a ball was taken up during the shot</source>
            <translation>这一杆中有球被拿起</translation>
        </message>
        <message>
            <source>a ball moved that nothing hit</source>
            <translation>有球未被碰到却移动了</translation>
        </message>
        <message>
            <source>balls may have been taken for each other</source>
            <translation>球可能被相互认错</translation>
        </message>
        <message>
            <source>a moving ball was lost from view</source>
            <translation>一颗运动的球从视野中消失</translation>
        </message>
        <message>
            <source>two balls were hit too close together to tell which came first</source>
            <translation>两颗球被碰到的时间太近，分不出先后</translation>
        </message>
        <message>
            <source>a ball was lost on its way to a pocket</source>
            <translation>一颗球在去往袋口途中消失</translation>
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
            <translation>%1%</translation>
        </message>
        <message>
            <source>%1–%2 %</source>
            <comment>from, to, per cent</comment>
            <translation>%1–%2%</translation>
        </message>
    </context>
    <context>
        <name>PeopleWords</name>
        <message>
            <source>a parent or guardian</source>
            <translation>父母或监护人</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>某人</translation>
        </message>
        <message>
            <source>%1 (parent or guardian)</source>
            <translation>%1（父母或监护人）</translation>
        </message>
        <message>
            <source>Ask before shots of this person are measured and kept.</source>
            <translation>在测量并保存此人的击球之前先征求同意。</translation>
        </message>
        <message>
            <source>No film is kept of this person.</source>
            <translation>不保存此人的视频。</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>未知</translation>
        </message>
        <message>
            <source>Right-handed</source>
            <translation>右手</translation>
        </message>
        <message>
            <source>Left-handed</source>
            <translation>左手</translation>
        </message>
        <message>
            <source>Both hands</source>
            <translation>双手</translation>
        </message>
        <message>
            <source>Measured shots</source>
            <translation>测量的击球</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>视频</translation>
        </message>
        <message>
            <source>Film of a minor</source>
            <translation>未成年人的视频</translation>
        </message>
        <message>
            <source>Handing on the report</source>
            <translation>转交报告</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until %3.</source>
            <translation>由 %1 于 %2 给予，至 %3 为止。</translation>
        </message>
        <message>
            <source>Given by %1 on %2, until it is withdrawn.</source>
            <translation>由 %1 于 %2 给予，直到撤回为止。</translation>
        </message>
        <message>
            <source>Missing.</source>
            <translation>未取得。</translation>
        </message>
        <message>
            <source>Given by %1 on %2, but for a minor a parent or guardian must give it.</source>
            <translation>由 %1 于 %2 给予，但未成年人须由父母或监护人给予。</translation>
        </message>
        <message>
            <source>Expired on %1.</source>
            <translation>已于 %1 到期。</translation>
        </message>
        <message>
            <source>Withdrawn by %1 on %2.</source>
            <translation>由 %1 于 %2 撤回。</translation>
        </message>
        <message>
            <source>%1 · %2: withdrawn by %3</source>
            <translation>%1 · %2：由 %3 撤回</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3 until %4</source>
            <translation>%1 · %2：由 %3 给予，至 %4</translation>
        </message>
        <message>
            <source>%1 · %2: given by %3</source>
            <translation>%1 · %2：由 %3 给予</translation>
        </message>
        <message>
            <source>, noted by %1</source>
            <translation>，由 %1 记下</translation>
        </message>
        <message>
            <source>, taken back as a mistake</source>
            <translation>，作为错误收回</translation>
        </message>
        <message>
            <source>guest</source>
            <translation>访客</translation>
        </message>
        <message>
            <source>no consent</source>
            <translation>未同意</translation>
        </message>
        <message>
            <source>no film</source>
            <translation>不可拍摄</translation>
        </message>
        <message>
            <source>Has not played yet.</source>
            <translation>还没有打过球。</translation>
        </message>
        <message numerus="yes">
            <source>%n session(s)</source>
            <translation>
                <numerusform>%n场</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n杆</numerusform>
            </translation>
        </message>
        <message>
            <source>last played on %1</source>
            <translation>最近一次打球：%1</translation>
        </message>
        <message>
            <source>The report goes to nobody but this person and, for a minor, a parent or guardian.</source>
            <translation>报告只交给此人本人；未成年人的报告也可交给父母或监护人。</translation>
        </message>
    </context>
    <context>
        <name>PlaceHelp</name>
        <message>
            <source>Go through the steps from the first; you can leave and come back at any time.</source>
            <translation>按顺序完成各步；随时可以离开，再回来继续。</translation>
        </message>
        <message>
            <source>Measure the table with a steel rule, nose to nose; equal diagonals mean that it is square.</source>
            <translation>用钢尺测量球台，从库边前沿到前沿；两条对角线相等说明球台方正。</translation>
        </message>
        <message>
            <source>Print the board at its true size, check its ruler, and take at least ten sharp stills that reach every corner of the image.</source>
            <translation>按真实尺寸打印标定板，核对其刻度尺，并拍至少十张清晰的照片，覆盖画面的每个角落。</translation>
        </message>
        <message>
            <source>Measure where the tags lie and how high they stand: one centimetre of height is worth millimetres at the balls.</source>
            <translation>测量标记的位置和高度：高度差一厘米，球的位置就差几毫米。</translation>
        </message>
        <message>
            <source>Ask the self-check whether lens and rig fit the film, and the error map how far a ball may be off.</source>
            <translation>用自检查看镜头和机位是否与视频相符，用误差图查看球的位置可能偏多少。</translation>
        </message>
        <message>
            <source>Begin with the game and who plays, or with practice alone.</source>
            <translation>先选比赛项目和球员，或选单人训练。</translation>
        </message>
        <message>
            <source>Drag the balls to where they lie; they are drawn to spots, cushions and other balls.</source>
            <translation>把球拖到它们所在的位置；球会吸附到置球点、库边和其他球。</translation>
        </message>
        <message>
            <source>Click the ball and the pocket that are played for, then press the key of what happened.</source>
            <translation>点选要打的球和袋口，再按结果对应的按键。</translation>
        </message>
        <message>
            <source>The referee keeps turn and score; undo takes back any step.</source>
            <translation>裁判负责轮次和比分；每一步都可以撤销。</translation>
        </message>
        <message>
            <source>Ask for a suggestion only when you want one: that it was shown is kept with the shot.</source>
            <translation>需要时才查看建议：是否看过建议会随该杆一起记录。</translation>
        </message>
        <message>
            <source>Choose a shot on the left, or scrub along the time line.</source>
            <translation>在左侧选一杆，或沿时间轴拖动。</translation>
        </message>
        <message>
            <source>Step by image, by event or by shot; film and plan always show the same moment.</source>
            <translation>可按帧、按事件或按杆步进；视频和俯视图始终显示同一时刻。</translation>
        </message>
        <message>
            <source>Suggested is dashed, taken is solid; the panel on the right sets both side by side.</source>
            <translation>建议为虚线，实打为实线；右侧面板把两者并排比较。</translation>
        </message>
        <message>
            <source>Each number stands with its standard uncertainty; what the film cannot show is called not observable.</source>
            <translation>每个数值都附标准不确定度；视频看不出的称为“无法观测”。</translation>
        </message>
        <message>
            <source>Filter the shots to play, say, all thick misses one after another.</source>
            <translation>筛选击球，例如把所有打厚的失误连续播放。</translation>
        </message>
        <message>
            <source>Choose a player and a period; a second column compares another period or player.</source>
            <translation>选择球员和时段；第二栏可与另一时段或另一球员比较。</translation>
        </message>
        <message>
            <source>Bands and whiskers are 95 % intervals; a change within them may be chance.</source>
            <translation>色带和须线为 95% 区间；区间内的变化可能只是偶然。</translation>
        </message>
        <message>
            <source>Click a point or a cell to look at the shots behind it.</source>
            <translation>点击某个点或格，查看其背后的击球。</translation>
        </message>
        <message>
            <source>What to work on names three things at most, with what each is worth in frames.</source>
            <translation>“练什么”最多列三项，并说明每项值多少局。</translation>
        </message>
        <message>
            <source>Choose the student, the period and the student's own language.</source>
            <translation>选择学员、时段和学员自己的语言。</translation>
        </message>
        <message>
            <source>Write a note of your own: it stands on the first page.</source>
            <translation>写一段评语：它会印在第一页。</translation>
        </message>
        <message>
            <source>The sheets on the screen are the ones that print; export them as PDF or HTML.</source>
            <translation>屏幕上的页面就是打印的页面；可导出为 PDF 或 HTML。</translation>
        </message>
        <message>
            <source>Put right what was read wrongly with one key, or from the right button's menu; what follows is read and ruled again.</source>
            <translation>用一个按键或右键菜单更正读错的内容；由此而来的部分会重新读取和判定。</translation>
        </message>
        <message>
            <source>Choose a drill on the left; point at a ball to see how its place is measured.</source>
            <translation>在左侧选一个练习；指向一颗球可看它的位置如何量取。</translation>
        </message>
        <message>
            <source>Every drill has mirror images: what is easy to one side may be hard to the other.</source>
            <translation>每个练习都有镜像：一侧容易的，另一侧可能很难。</translation>
        </message>
        <message>
            <source>Begin a run, click where the cue ball came to rest, and press the key of what happened.</source>
            <translation>开始一轮，点击母球停住的位置，再按下结果对应的键。</translation>
        </message>
        <message>
            <source>Or let the tries be counted from a session that was recorded.</source>
            <translation>或者从已记录的场次中自动计数。</translation>
        </message>
        <message>
            <source>The history says whether the last run differs from those before by more than chance.</source>
            <translation>历史会说明最近一轮与之前的差别是否超出偶然。</translation>
        </message>
        <message>
            <source>Add the players first: name, playing hand, groups such as juniors or Tuesday.</source>
            <translation>先添加球员：姓名、惯用手、分组（如少年组或周二组）。</translation>
        </message>
        <message>
            <source>Note who consented to what, when and until when; for a minor a parent or guardian does.</source>
            <translation>记下谁在何时同意了什么、有效至何时；未成年人由父母或监护人同意。</translation>
        </message>
        <message>
            <source>What is missing or has expired is said in words, with what follows: without consent no film is kept.</source>
            <translation>缺少或到期的同意会用文字说明，并说明后果：没有同意就不保存视频。</translation>
        </message>
        <message>
            <source>Nothing leaves the list of consents: withdrawal, renewal and mistakes are lines of their own.</source>
            <translation>同意列表中不会丢失任何内容：撤回、续期和更正都各占一行。</translation>
        </message>
        <message>
            <source>A guest's shots can be given to a player once it is known who it was.</source>
            <translation>一旦知道访客是谁，就可以把其击球归给那名球员。</translation>
        </message>
        <message>
            <source>From a film or live, what the referee cannot see is asked on the right: press the number of the answer.</source>
            <translation>从视频或实时测量时，裁判看不到的会在右侧询问：按答案编号即可。</translation>
        </message>
        <message>
            <source>A live session can keep its film beside the record, of people whose consent is noted in Players.</source>
            <translation>实时活动可在记录旁保存视频，仅限“球员”中记有同意的人。</translation>
        </message>
        <message>
            <source>Once Set-up has made a rig, the camera says how far each ball is from its place.</source>
            <translation>在“设置”中建立机位后，相机会显示各球与其位置的偏差。</translation>
        </message>
        <message>
            <source>Hold a shot to set another one beside it, with what differs below.</source>
            <translation>固定一杆，再与另一杆并排；下方列出差别。</translation>
        </message>
        <message>
            <source>Save what you see as a picture, or the shot as a short film; a film of people is written only with their consent, the plan always.</source>
            <translation>将所见画面存为图片，或将此杆存为短片；有人的视频须经其同意才写入，俯视图则不受限。</translation>
        </message>
        <message>
            <source>Without tags and board the cushions serve; the error map then says what they cost. A cushion that was missed or mistaken is placed by hand under a loupe, in the step Rig.</source>
            <translation>没有标记和标定板时可用库边；误差图会说明代价。遗漏或误认的库边，可在“机位”步骤中用放大镜手动放置。</translation>
        </message>
        <message>
            <source>Every edit can be undone, and brings back what it had made void, the rig included.</source>
            <translation>每次修改都可以撤销，并恢复因此作废的内容，包括机位。</translation>
        </message>
        <message>
            <source>The rig is checked against the film before it is measured, and every five minutes of live play; check the rig again at any moment by its key.</source>
            <translation>测量前会用视频检查机位，实况中每五分钟检查一次；也可随时按键重新检查。</translation>
        </message>
        <message>
            <source>With a projector the suggestion, or where balls must be put back, lies on the cloth. A live session makes it black while somebody leans over the table.</source>
            <translation>有投影仪时，建议打法或球须放回的位置会显示在台呢上。实况中有人俯身到球台上方时会变黑。</translation>
        </message>
        <message>
            <source>With a projector the set-up can lie on the cloth; never look into the beam.</source>
            <translation>有投影仪时，摆位可以显示在台呢上；绝不可直视光束。</translation>
        </message>
    </context>
    <context>
        <name>Places</name>
        <message>
            <source>Set-up</source>
            <translation>设置</translation>
        </message>
        <message>
            <source>Set up table, lens and rig, and see how far to trust them</source>
            <translation>设置球台、镜头和机位，并查看其可信程度</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>场次</translation>
        </message>
        <message>
            <source>Put in what is played, shot by shot</source>
            <translation>一杆一杆地录入打球情况</translation>
        </message>
        <message>
            <source>Review</source>
            <translation>复盘</translation>
        </message>
        <message>
            <source>Look at measured shots, film and plan together</source>
            <translation>对照视频和俯视图查看已测的击球</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>进步</translation>
        </message>
        <message>
            <source>See how a player's aim, speed and makes hold up</source>
            <translation>查看球员的瞄准、力度和进球是否稳定</translation>
        </message>
        <message>
            <source>Reports</source>
            <translation>报告</translation>
        </message>
        <message>
            <source>Make the progress report that a student takes home</source>
            <translation>制作学员带回家的进步报告</translation>
        </message>
        <message>
            <source>Drills</source>
            <translation>练习</translation>
        </message>
        <message>
            <source>Set up a drill, repeat it, and see the scatter shrink</source>
            <translation>摆好练习，反复打，看散布缩小</translation>
        </message>
        <message>
            <source>Players</source>
            <translation>球员</translation>
        </message>
        <message>
            <source>Who plays: groups, consent, notes, and what is kept of each</source>
            <translation>谁在打球：分组、同意、备注，以及每人保存了什么</translation>
        </message>
    </context>
    <context>
        <name>PlanSentence</name>
        <message>
            <source>leaves the opponent an open pot %1 times in 10</source>
            <translation>10次中有%1次给对手留下进攻机会</translation>
        </message>
        <message>
            <source>pot %1</source>
            <translation>进球率%1</translation>
        </message>
        <message>
            <source>pot %1 against %2</source>
            <translation>进球率%1（对比%2）</translation>
        </message>
        <message>
            <source>the leave gives %1 a shot %2 times in 10</source>
            <translation>走位后10次中有%2次能打%1</translation>
        </message>
        <message>
            <source>foul %1</source>
            <translation>犯规率%1</translation>
        </message>
        <message>
            <source>as good as %1</source>
            <translation>与%1相当</translation>
        </message>
        <message>
            <source>better than %1</source>
            <translation>优于%1</translation>
        </message>
        <message>
            <source>behind %1</source>
            <translation>不及%1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>%1号球打向%2</translation>
        </message>
        <message>
            <source>%1 into %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>%1号球传%2号球打向%3</translation>
        </message>
        <message>
            <source>off %1 onto %2 to %3</source>
            <comment>ball, ball, pocket</comment>
            <translation>借%1号球将%2号球打向%3</translation>
        </message>
        <message>
            <source>bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>%1号球翻向%2</translation>
        </message>
        <message>
            <source>two-cushion bank %1 to %2</source>
            <comment>ball, pocket</comment>
            <translation>%1号球两库翻向%2</translation>
        </message>
        <message>
            <source>kick at %1</source>
            <comment>a ball</comment>
            <translation>一库解%1号球</translation>
        </message>
        <message>
            <source>two-cushion kick at %1</source>
            <comment>a ball</comment>
            <translation>两库解%1号球</translation>
        </message>
        <message>
            <source>safety off %1</source>
            <comment>a ball</comment>
            <translation>打%1号球防守</translation>
        </message>
        <message>
            <source>break</source>
            <translation>开球</translation>
        </message>
        <message>
            <source>%1 was the right shot.</source>
            <translation>%1是正确的打法。</translation>
        </message>
        <message>
            <source>%1 was the right ball, but another speed or spin was better: %2.</source>
            <translation>%1，球选对了，但换一种力度或旋转更好：%2。</translation>
        </message>
        <message>
            <source>%1 is as good as %2: %3.</source>
            <translation>%1与%2相当：%3。</translation>
        </message>
        <message>
            <source>%1 was better than %2.</source>
            <translation>%1优于%2。</translation>
        </message>
        <message>
            <source>%1 was better than %2: %3.</source>
            <translation>%1优于%2：%3。</translation>
        </message>
    </context>
    <context>
        <name>PlayCharts</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>value, least, most</comment>
            <translation>%1（%2到%3）</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%2次中的%1次</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>开球：有球进且不犯规</translation>
        </message>
        <message>
            <source>break: fouls</source>
            <translation>开球：犯规</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>开球：进球数</translation>
        </message>
        <message>
            <source>break: cue ball from the middle</source>
            <translation>开球：母球距台面中心</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>每次上手进球数</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>赢下的局中一次上手清台的</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>犯规，占全部击球</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>未进的简单球，占全部简单球</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>每杆用时</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>比赛</translation>
        </message>
        <message>
            <source>With the number counted; lines and brackets: 95 % interval.</source>
            <translation>后为计数；横线与括号：95%区间。</translation>
        </message>
        <message>
            <source>left no direct shot</source>
            <translation>未留下直接球</translation>
        </message>
        <message>
            <source>next player: made a ball</source>
            <translation>下一位：进球</translation>
        </message>
        <message>
            <source>next player: missed</source>
            <translation>下一位：未进</translation>
        </message>
        <message>
            <source>next player: safety</source>
            <translation>下一位：防守</translation>
        </message>
        <message>
            <source>next player: foul</source>
            <translation>下一位：犯规</translation>
        </message>
        <message>
            <source>Safeties and what came next</source>
            <translation>防守及其后</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>停在下一颗球的错误一侧</translation>
        </message>
        <message>
            <source>cost on the right side</source>
            <translation>正确一侧的代价</translation>
        </message>
        <message>
            <source>cost on the wrong side</source>
            <translation>错误一侧的代价</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>比预想的长（+）或短</translation>
        </message>
        <message>
            <source>Position for the next ball</source>
            <translation>为下一颗球的走位</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan that was taken. Cost: of the frame's chance. Lines and brackets: 95 % interval.</source>
            <translation>进球的杆，与所打方案相比。代价：占赢局机会。横线与括号：95%区间。</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>选择与出杆</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>出杆好</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>出杆差</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>选择好</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>选择差</translation>
        </message>
        <message>
            <source>Shots in each box and the 95 % interval of their share. Ties count as good; shots after a suggestion was shown are left out.</source>
            <translation>每格的杆数及其比例的95%区间。相当的选择算好；显示过建议的杆不计。</translation>
        </message>
        <message>
            <source>Chances as stated and as they came out</source>
            <translation>预测机会与实际结果</translation>
        </message>
        <message>
            <source>stated %1, fell %2 (%3), %4</source>
            <comment>chance, share, interval, number of shots</comment>
            <translation>预测%1，实际%2（%3），%4</translation>
        </message>
        <message>
            <source>Across: the chance that the plan was given, up: the share that fell, with its 95 % interval. On the dashed line both agree. Hollow: fewer than 10.</source>
            <translation>横轴：方案的预测机会；纵轴：实际进球比例及其95%区间。虚线上二者一致。空心：少于10杆。</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>每局上手次数</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>进球前用时</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>未进前用时</translation>
        </message>
        <message>
            <source>No direct shot: the planner found none for the next player. Lines: 95 % interval.</source>
            <translation>未留直接球：没有为下一位找到直接球。横线：95%区间。</translation>
        </message>
    </context>
    <context>
        <name>PrintSheets</name>
        <message>
            <source>Calibration board %1</source>
            <translation>标定板%1</translation>
        </message>
        <message>
            <source>Tags for the rails</source>
            <translation>台边标记</translation>
        </message>
        <message>
            <source>Tag %1: black side %2 mm; cut along the dashes, top is up</source>
            <translation>标记%1：黑色方块边长%2 mm；沿虚线剪下，此边朝上</translation>
        </message>
        <message>
            <source>Print at 100 %, not fitted to the page. Both lines must measure 100 mm with a steel rule; if not, tell the program what they measure.</source>
            <translation>请按100%打印，不要按页面缩放。两条线用钢尺量都应为100 mm；否则请把量得的长度填入程序。</translation>
        </message>
    </context>
    <context>
        <name>ProgressWords</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1至%2</translation>
        </message>
        <message>
            <source>since %1</source>
            <translation>自%1起</translation>
        </message>
        <message>
            <source>practice</source>
            <translation>训练</translation>
        </message>
        <message>
            <source>matches</source>
            <translation>比赛</translation>
        </message>
        <message>
            <source>lessons</source>
            <translation>教学</translation>
        </message>
        <message>
            <source>There is not yet enough to say what to work on first; every further session helps.</source>
            <translation>数据还不够，无法说明先练什么；每多一场都有帮助。</translation>
        </message>
        <message>
            <source>Drill: %1</source>
            <translation>练习：%1</translation>
        </message>
        <message>
            <source>This one and the next are about equal; take either first.</source>
            <translation>本项与下一项大致相当，先练哪一项都可以。</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection.</source>
            <translation>所选范围内没有该球员的击球。</translation>
        </message>
        <message>
            <source>pots tried: %1</source>
            <translation>尝试进攻球：%1</translation>
        </message>
        <message>
            <source>Not tracked: %1. Changed by a person: %2. Waiting for a person: %3.</source>
            <translation>未跟踪：%1。人工更正：%2。待人工确认：%3。</translation>
        </message>
        <message>
            <source>Pocket named by a person: %1 of %2; never mixed with pockets read from the balls.</source>
            <translation>人工指定袋口：%2颗中有%1颗；绝不与由球路判读的袋口混合统计。</translation>
        </message>
        <message>
            <source>Left out, since its pockets differ: %1 (mouth %2 mm, %3).</source>
            <translation>因袋口不同而未计入：%1（袋口宽%2 mm，%3）。</translation>
        </message>
        <message>
            <source>Dated in the future: %1. Check the clock.</source>
            <translation>日期在未来：%1。请检查时钟。</translation>
        </message>
    </context>
    <context>
        <name>ReportBuilder</name>
        <message>
            <source>Progress report: %1</source>
            <translation>进步报告：%1</translation>
        </message>
        <message>
            <source>%1 · made with Ferrule on %2</source>
            <translation>%1 · 由Ferrule于%2制作</translation>
        </message>
        <message>
            <source>Pots</source>
            <translation>进球</translation>
        </message>
        <message>
            <source>Pots whose pocket was named by a person. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>袋口由人工指定的进攻球。每格显示所尝试的球进了多少、真实比例在哪两个数之间，以及尝试了多少颗。</translation>
        </message>
        <message>
            <source>Made by cut and distance: %1.</source>
            <translation>按切角与距离的进球率：%1。</translation>
        </message>
        <message>
            <source>All pots</source>
            <translation>全部进攻球</translation>
        </message>
        <message>
            <source>made</source>
            <translation>进球率</translation>
        </message>
        <message>
            <source>95 % interval</source>
            <translation>95%区间</translation>
        </message>
        <message>
            <source>tried</source>
            <translation>尝试</translation>
        </message>
        <message>
            <source>pocket read from the balls</source>
            <translation>袋口由球路判读</translation>
        </message>
        <message>
            <source>pocket named by a person</source>
            <translation>袋口由人工指定</translation>
        </message>
        <message>
            <source>Aim and speed</source>
            <translation>瞄准与力度</translation>
        </message>
        <message>
            <source>How far the strokes scatter, session by session: lower is steadier. The aim is worked out from the line on which the object ball ran, so near and far shots compare.</source>
            <translation>逐场显示出杆的散布：越低越稳。瞄准由目标球的走线推算，因此远近台的球可以相互比较。</translation>
        </message>
        <message>
            <source>Scatter of the aim</source>
            <translation>瞄准散布</translation>
        </message>
        <message>
            <source>Scatter of the aim: not enough sessions with %1 or more to draw.</source>
            <translation>瞄准散布：达到%1的场次太少，无法绘图。</translation>
        </message>
        <message>
            <source>Scatter of the speed in repeated set-ups</source>
            <translation>重复球形中的力度散布</translation>
        </message>
        <message>
            <source>Scatter of the speed</source>
            <translation>力度散布</translation>
        </message>
        <message>
            <source>Scatter of the speed: not enough sessions with %1 or more to draw.</source>
            <translation>力度散布：达到%1的场次太少，无法绘图。</translation>
        </message>
        <message>
            <source>Scatter of the speed: %1.</source>
            <translation>力度散布：%1。</translation>
        </message>
        <message>
            <source>Stroke</source>
            <translation>出杆</translation>
        </message>
        <message>
            <source>value</source>
            <translation>数值</translation>
        </message>
        <message>
            <source>shots</source>
            <translation>杆数</translation>
        </message>
        <message>
            <source>aim: scatter</source>
            <translation>瞄准：散布</translation>
        </message>
        <message>
            <source>aim: mean, + to the left</source>
            <translation>瞄准：均值，偏左为正</translation>
        </message>
        <message>
            <source>cuts to the left: mean, + thin, − thick</source>
            <translation>左切：均值，薄为正、厚为负</translation>
        </message>
        <message>
            <source>cuts to the right: mean, + thin, − thick</source>
            <translation>右切：均值，薄为正、厚为负</translation>
        </message>
        <message>
            <source>speed: scatter</source>
            <translation>力度：散布</translation>
        </message>
        <message>
            <source>speed: mean error</source>
            <translation>力度：平均误差</translation>
        </message>
        <message>
            <source>tip point, side: scatter</source>
            <translation>击点左右：散布</translation>
        </message>
        <message>
            <source>tip point, height: scatter</source>
            <translation>击点高低：散布</translation>
        </message>
        <message>
            <source>rest of the cue ball: scatter each way</source>
            <translation>母球停位：各方向散布</translation>
        </message>
        <message>
            <source>Nobody wrote down what was meant, so speed, tip point and rest are compared with the player's own mean in set-ups that were repeated: this shows how well a stroke is repeated, not whether it was right.</source>
            <translation>没有人记下原本想怎样打，因此力度、击点和停位是与该球员在重复球形中的自身均值比较：这只说明出杆的重复性，不说明打得对不对。</translation>
        </message>
        <message>
            <source>The game</source>
            <translation>实战</translation>
        </message>
        <message>
            <source>Measure</source>
            <translation>指标</translation>
        </message>
        <message>
            <source>counted</source>
            <translation>样本数</translation>
        </message>
        <message>
            <source>break: a ball and no foul</source>
            <translation>开球：有球进且不犯规</translation>
        </message>
        <message>
            <source>break: balls</source>
            <translation>开球：进球数</translation>
        </message>
        <message>
            <source>balls in an inning</source>
            <translation>每次上手进球数</translation>
        </message>
        <message>
            <source>frames won that were run out</source>
            <translation>赢下的局中一次上手清台的</translation>
        </message>
        <message>
            <source>safeties that left no direct shot</source>
            <translation>没有给对手留下直接球的防守</translation>
        </message>
        <message>
            <source>fouls, of all shots</source>
            <translation>犯规，占全部击球</translation>
        </message>
        <message>
            <source>easy pots missed, of easy ones</source>
            <translation>未进的简单球，占全部简单球</translation>
        </message>
        <message>
            <source>time for a shot</source>
            <translation>每杆用时</translation>
        </message>
        <message>
            <source>time before a ball that went in</source>
            <translation>进球前用时</translation>
        </message>
        <message>
            <source>time before a miss</source>
            <translation>未进前用时</translation>
        </message>
        <message>
            <source>An easy pot is one that this player makes at least four times in five. Hard shots take longer and are missed more often, so more time before a miss is no fault by itself. Innings depend on the opponent and the rack.</source>
            <translation>简单球是指该球员五次至少能打进四次的球。难球用时更长，失误也更多，所以未进前用时较长本身不是毛病。上手的数据受对手和球形影响。</translation>
        </message>
        <message>
            <source>Choice and delivery</source>
            <translation>选择与出杆</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: no suggestions are recorded for these shots.</source>
            <translation>无法判断打法是否选对：这些击球没有记录建议。</translation>
        </message>
        <message>
            <source>Whether the right shot was chosen cannot be said: %1.</source>
            <translation>无法判断打法是否选对：%1。</translation>
        </message>
        <message>
            <source>by the choice</source>
            <translation>来自选择</translation>
        </message>
        <message>
            <source>by the delivery</source>
            <translation>来自出杆</translation>
        </message>
        <message>
            <source>well struck</source>
            <translation>出杆好</translation>
        </message>
        <message>
            <source>badly struck</source>
            <translation>出杆差</translation>
        </message>
        <message>
            <source>good choice</source>
            <translation>选择好</translation>
        </message>
        <message>
            <source>poor choice</source>
            <translation>选择差</translation>
        </message>
        <message>
            <source>Options that are too close to tell apart count as good. A shot is never wrong merely for differing from the suggestion.</source>
            <translation>难分高下的打法都算选择好。不会仅仅因为与建议不同就判为错误。</translation>
        </message>
        <message>
            <source>%1, %2, shot %3 to %4</source>
            <translation>%1，%2，第%3杆打向%4</translation>
        </message>
        <message>
            <source>Worth looking at again</source>
            <translation>值得再看</translation>
        </message>
        <message>
            <source>The best: %1. This player makes such a ball about %2 of the time.</source>
            <translation>最佳：%1。这样的球该球员约有%2的把握打进。</translation>
        </message>
        <message>
            <source>The most instructive: %1. Missed, though such a ball goes in about %2 of the time.</source>
            <translation>最有启发：%1。未进，而这样的球约有%2的把握打进。</translation>
        </message>
        <message>
            <source>How the numbers were made</source>
            <translation>数字的由来</translation>
        </message>
        <message>
            <source>Intervals hold the true value 95 times in 100. They come from drawing whole sessions again, since shots of one day are alike; shares of single cells are Wilson intervals.</source>
            <translation>区间在100次中有95次包含真值。由于同一天的击球彼此相似，区间是以整场为单位重新抽样得出的；单格的比例用Wilson区间。</translation>
        </message>
        <message>
            <source>All findings of this report together raise a false alarm in at most 5 of 100 reports about players of whom none is true.</source>
            <translation>对于各项结论其实都不成立的球员，本报告的全部结论合在一起，每100份报告中最多有5份误报。</translation>
        </message>
        <message>
            <source>Harder shots are allowed for: what went in is compared with what this player makes of shots with the same cut, distances and pocket.</source>
            <translation>已计入球的难度：实际进球与该球员在相同切角、距离和袋口下的进球率比较。</translation>
        </message>
        <message>
            <source>Tables whose pockets differ in width are never put together, and players are not ranked.</source>
            <translation>袋口宽度不同的球台绝不合并统计，也不对球员排名。</translation>
        </message>
        <message>
            <source>Position</source>
            <translation>走位</translation>
        </message>
        <message>
            <source>On which side of the next ball the cue ball was left: %1.</source>
            <translation>母球停在下一颗球的哪一侧：%1。</translation>
        </message>
        <message>
            <source>The drill with most tries: %1</source>
            <translation>练得最多的练习：%1</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>达成全部目标的次数</translation>
        </message>
        <message>
            <source>innings in a frame</source>
            <translation>每局上手次数</translation>
        </message>
        <message>
            <source>Pots whose pocket was read from the paths of the balls; a lucky ball may count as meant. Every cell shows how many of the balls tried went in, between which shares the true one lies, and how many were tried.</source>
            <translation>袋口由球路判读的进攻球；蒙进的球可能被当作有意打进。每格显示所尝试的球进了多少、真实比例在哪两个数之间，以及尝试了多少颗。</translation>
        </message>
        <message>
            <source>Made, by cut and distance of the cue ball</source>
            <translation>进球率：按切角与母球距离</translation>
        </message>
        <message>
            <source>Made, by cut and distance to the pocket</source>
            <translation>进球率：按切角与到袋口的距离</translation>
        </message>
        <message>
            <source>On which side the misses lie: too few missed cuts to say.</source>
            <translation>未进球的厚薄：未进的切球太少，无法判断。</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>least, most</comment>
            <translation>%1至%2</translation>
        </message>
        <message>
            <source>Two strokes in three lie within the scatter on either side of the mean. R: the ball's radius.</source>
            <translation>每三杆中有两杆落在平均值两侧的散布之内。R：球的半径。</translation>
        </message>
        <message>
            <source>break: distance of the cue ball from the middle</source>
            <translation>开球：母球到台面中心的距离</translation>
        </message>
        <message>
            <source>Pots that fell, against the plan</source>
            <translation>进球的杆，与所打方案相比</translation>
        </message>
        <message>
            <source>on the wrong side of the next ball</source>
            <translation>停在下一颗球的错误一侧</translation>
        </message>
        <message>
            <source>cost on the right side, of the frame's chance</source>
            <translation>正确一侧的代价，占赢局机会</translation>
        </message>
        <message>
            <source>cost on the wrong side, of the frame's chance</source>
            <translation>错误一侧的代价，占赢局机会</translation>
        </message>
        <message>
            <source>longer (+) or shorter than meant</source>
            <translation>比预想的长（+）或短</translation>
        </message>
        <message>
            <source>Cost of a shot, of the chance to win the frame</source>
            <translation>每杆损失，占赢局机会</translation>
        </message>
    </context>
    <context>
        <name>ReportWords</name>
        <message>
            <source>d MMMM yyyy</source>
            <translation>yyyy年M月d日</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>M月d日</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln杆</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln session(s)</source>
            <translation>
                <numerusform>%Ln场</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 shots</source>
            <translation>数据不足：%2杆中已有%1杆</translation>
        </message>
        <message>
            <source>not enough yet: %1 of %2 sessions</source>
            <translation>数据不足：%2场中已有%1场</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant</source>
            <translation>没有人记下原本想怎样打</translation>
        </message>
        <message>
            <source>nobody wrote down what was meant, and no set-up was repeated</source>
            <translation>没有人记下原本想怎样打，也没有重复的球形</translation>
        </message>
        <message>
            <source>the films have no clock</source>
            <translation>视频没有时钟</translation>
        </message>
        <message>
            <source>not recorded yet</source>
            <translation>尚未记录</translation>
        </message>
        <message>
            <source>the aim over the weeks</source>
            <translation>几周来的瞄准</translation>
        </message>
        <message>
            <source>the control of speed over the weeks</source>
            <translation>几周来的力度控制</translation>
        </message>
        <message>
            <source>the balls potted over the weeks</source>
            <translation>几周来的进球</translation>
        </message>
        <message>
            <source>the aim after 40 minutes</source>
            <translation>40分钟后的瞄准</translation>
        </message>
        <message>
            <source>the balls potted after 40 minutes</source>
            <translation>40分钟后的进球</translation>
        </message>
        <message>
            <source>the balls potted in matches</source>
            <translation>比赛中的进球</translation>
        </message>
        <message>
            <source>a pull to the left or right</source>
            <translation>瞄准偏左或偏右</translation>
        </message>
        <message>
            <source>thick or thin cuts to the left</source>
            <translation>左切偏厚或偏薄</translation>
        </message>
        <message>
            <source>thick or thin cuts to the right</source>
            <translation>右切偏厚或偏薄</translation>
        </message>
        <message>
            <source>The aim got steadier: from about %1 off to about %2 off.</source>
            <translation>瞄准更稳了：偏差由约%1变为约%2。</translation>
        </message>
        <message>
            <source>The aim got less steady: from about %1 off to about %2 off.</source>
            <translation>瞄准不如以前稳：偏差由约%1变为约%2。</translation>
        </message>
        <message>
            <source>The speed of the stroke got steadier: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>出杆力度更稳了：波动由最初的约%1变为最后的约%2。</translation>
        </message>
        <message>
            <source>The speed of the stroke got less steady: it strayed by about %1 at first and by about %2 at the end.</source>
            <translation>出杆力度不如以前稳：波动由最初的约%1变为最后的约%2。</translation>
        </message>
        <message>
            <source>Fewer balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>进球少了：计入难度，每尝试100颗球，最初约进%1颗，最后约进%2颗。</translation>
        </message>
        <message>
            <source>More balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they were.</source>
            <translation>进球多了：计入难度，每尝试100颗球，最初约进%1颗，最后约进%2颗。</translation>
        </message>
        <message>
            <source>The aim is better late in a session: about %1 off before 40 minutes and %2 after.</source>
            <translation>场次后段瞄准更好：40分钟前偏差约%1，之后约%2。</translation>
        </message>
        <message>
            <source>The aim gets worse when a session grows long: about %1 off before 40 minutes and %2 after. A break may help.</source>
            <translation>打得久了瞄准会变差：40分钟前偏差约%1，之后约%2。休息一下可能有帮助。</translation>
        </message>
        <message>
            <source>Fewer balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>场次后段进球较少：同样难度的100颗球，40分钟前约进%1颗，之后约进%2颗。</translation>
        </message>
        <message>
            <source>More balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 after.</source>
            <translation>场次后段进球较多：同样难度的100颗球，40分钟前约进%1颗，之后约进%2颗。</translation>
        </message>
        <message>
            <source>Fewer balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>比赛中进球较少：同样难度的100颗球，训练中约进%1颗，比赛中约进%2颗。</translation>
        </message>
        <message>
            <source>More balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in matches.</source>
            <translation>比赛中进球较多：同样难度的100颗球，训练中约进%1颗，比赛中约进%2颗。</translation>
        </message>
        <message>
            <source>The aim is pulled to the right by %1 on average, whichever way the ball has to go.</source>
            <translation>无论球要往哪边走，瞄准平均偏右%1。</translation>
        </message>
        <message>
            <source>The aim is pulled to the left by %1 on average, whichever way the ball has to go.</source>
            <translation>无论球要往哪边走，瞄准平均偏左%1。</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>左切的球打得偏厚：瞄准平均偏差%1。</translation>
        </message>
        <message>
            <source>Balls that must go to the left are hit too thin: the aim is off by %1 on average.</source>
            <translation>左切的球打得偏薄：瞄准平均偏差%1。</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too full (thick): the aim is off by %1 on average.</source>
            <translation>右切的球打得偏厚：瞄准平均偏差%1。</translation>
        </message>
        <message>
            <source>Balls that must go to the right are hit too thin: the aim is off by %1 on average.</source>
            <translation>右切的球打得偏薄：瞄准平均偏差%1。</translation>
        </message>
        <message>
            <source>Centre-line there and back</source>
            <translation>中线往返</translation>
        </message>
        <message>
            <source>Cut fan, left half</source>
            <translation>扇形切球，左半</translation>
        </message>
        <message>
            <source>Cut fan, right half</source>
            <translation>扇形切球，右半</translation>
        </message>
        <message>
            <source>Cut fan as the last drill of the day</source>
            <translation>扇形切球，作为当天最后一项练习</translation>
        </message>
        <message>
            <source>Straight stop ladder</source>
            <translation>直线定杆阶梯</translation>
        </message>
        <message>
            <source>Thin cut</source>
            <translation>薄球</translation>
        </message>
        <message>
            <source>Lag to the head rail</source>
            <translation>比球到开球端库边</translation>
        </message>
        <message>
            <source>Straight draw bands</source>
            <translation>直线拉杆分档</translation>
        </message>
        <message>
            <source>Send the cue ball alone from the head spot over the middle of the foot cushion and back; it should return over its start.</source>
            <translation>只用母球，从开球点打向置球端库边的中点再弹回；母球应重新经过出发点。</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the left.</source>
            <translation>目标球在中线上，距置球端库边四分之一台长；母球距其半个台宽；向左切15、30、45和60度。</translation>
        </message>
        <message>
            <source>Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; cuts of 15, 30, 45 and 60 degrees to the right.</source>
            <translation>目标球在中线上，距置球端库边四分之一台长；母球距其半个台宽；向右切15、30、45和60度。</translation>
        </message>
        <message>
            <source>Cuts of 15, 30, 45 and 60 degrees to both sides, played after 40 minutes of practice: rest for five minutes first, and keep the routine.</source>
            <translation>左右两侧各切15、30、45和60度，在训练40分钟之后打：先休息五分钟，并保持击球前的固定步骤。</translation>
        </message>
        <message>
            <source>Straight pots from four distances, each a step longer; the cue ball stops dead at the contact.</source>
            <translation>四个距离的直线球，每次加长一步；母球碰到目标球后立即停住。</translation>
        </message>
        <message>
            <source>Object ball a quarter of the table from the foot cushion and near the side; cut of 65 degrees into the corner.</source>
            <translation>目标球距置球端库边四分之一台长，靠近长库边；以65度切入角袋。</translation>
        </message>
        <message>
            <source>Object ball on the foot spot, cue ball behind the head string: cuts of 33, 47 and 60 degrees into the corner.</source>
            <translation>目标球在置球点，母球在开球线后：以33、47和60度切入角袋。</translation>
        </message>
        <message>
            <source>Send the cue ball alone from behind the head string to the foot cushion and back; it should stop as near to the head cushion as it can.</source>
            <translation>只用母球，从开球线后打向置球端库边再弹回；应尽量停在靠近开球端库边处。</translation>
        </message>
        <message>
            <source>Straight pots of a metre; the cue ball comes back by nothing, one, two and three hands' breadths, called before each stroke.</source>
            <translation>一米长的直线球；母球定住，或拉回一掌、两掌、三掌宽，每次出杆前先报出距离。</translation>
        </message>
        <message>
            <source>The pull of the aim to one side</source>
            <translation>瞄准偏向一侧</translation>
        </message>
        <message>
            <source>Cuts to the left</source>
            <translation>左切</translation>
        </message>
        <message>
            <source>Cuts to the right</source>
            <translation>右切</translation>
        </message>
        <message>
            <source>The end of long sessions</source>
            <translation>长场次的后段</translation>
        </message>
        <message>
            <source>Long shots</source>
            <translation>长距离球</translation>
        </message>
        <message>
            <source>Thin cuts</source>
            <translation>薄球</translation>
        </message>
        <message>
            <source>Short and medium shots</source>
            <translation>中短距离球</translation>
        </message>
        <message>
            <source>Control of the speed</source>
            <translation>力度控制</translation>
        </message>
        <message>
            <source>Where the tip meets the ball</source>
            <translation>击点位置</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the speed.</source>
            <translation>在模拟器中将力度散布减小五分之一，重打了%1杆。</translation>
        </message>
        <message>
            <source>%1 shots were played again in the simulator with a fifth less scatter of the tip.</source>
            <translation>在模拟器中将击点散布减小五分之一，重打了%1杆。</translation>
        </message>
        <message>
            <source>%1 such pots were tried and %2 made.</source>
            <translation>这样的球尝试了%1颗，进球率%2。</translation>
        </message>
        <message>
            <source>Test again on %1.</source>
            <translation>%1再测。</translation>
        </message>
        <message>
            <source>Target: speeds that scatter by %1 or less.</source>
            <translation>目标：力度散布不超过%1。</translation>
        </message>
        <message>
            <source>Target: a tip that scatters by %1 of the ball's radius or less.</source>
            <translation>目标：击点散布不超过球半径的%1。</translation>
        </message>
        <message>
            <source>Target: %1 of %2.</source>
            <translation>目标：%2次中%1次。</translation>
        </message>
        <message>
            <source>Were these a fifth steadier, about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>若这些球稳定五分之一，每尝试100颗球约可多进%1颗（很可能%2）。</translation>
        </message>
        <message>
            <source>Without this habit about %1 more balls of every 100 tried would go in (very probably %2).</source>
            <translation>若没有这个习惯，每尝试100颗球约可多进%1颗（很可能%2）。</translation>
        </message>
        <message>
            <source>That is worth about %1 frames of every 100 (very probably %2).</source>
            <translation>约合每100局多赢%1局（很可能%2）。</translation>
        </message>
        <message>
            <source>%1 or more of %2 would prove by themselves that it was no luck.</source>
            <translation>%2次中达到%1次或更多，本身就能证明不是运气。</translation>
        </message>
        <message>
            <source>Foot-spot long cuts</source>
            <translation>置球点长台切球组</translation>
        </message>
    </context>
    <context>
        <name>ReviewWords</name>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>image %1 of %2</source>
            <translation>第%1帧，共%2帧</translation>
        </message>
    </context>
    <context>
        <name>RulingSentence</name>
        <message>
            <source>Foul: %1.</source>
            <translation>犯规：%1。</translation>
        </message>
        <message>
            <source> and </source>
            <comment>last of a list</comment>
            <translation>，以及</translation>
        </message>
        <message>
            <source>A push-out.</source>
            <translation>推球（push-out）。</translation>
        </message>
        <message>
            <source>The break was too weak, which is no foul.</source>
            <translation>开球力度不足，但不算犯规。</translation>
        </message>
        <message>
            <source>%1 has %2.</source>
            <translation>%1打%2。</translation>
        </message>
        <message>
            <source>%1 is spotted.</source>
            <translation>%1重新置球。</translation>
        </message>
        <message>
            <source>%1 is put back.</source>
            <translation>%1放回原位。</translation>
        </message>
        <message>
            <source>All balls are racked.</source>
            <translation>重新摆好全部球。</translation>
        </message>
        <message>
            <source>14 balls are racked without the apex.</source>
            <translation>将14颗球摆好，空出顶球位置。</translation>
        </message>
        <message>
            <source>%1 is at the table, %2.</source>
            <translation>轮到%1击球，%2。</translation>
        </message>
        <message>
            <source>%1 plays on.</source>
            <translation>%1继续击球。</translation>
        </message>
        <message>
            <source>%1 is at the table.</source>
            <translation>轮到%1击球。</translation>
        </message>
        <message>
            <source>%1 may choose: %2.</source>
            <translation>%1可以选择：%2。</translation>
        </message>
        <message>
            <source> or </source>
            <comment>last of a list</comment>
            <translation>，或</translation>
        </message>
        <message>
            <source>%1: %2, now %3.</source>
            <comment>player, points of the shot, points in all</comment>
            <translation>%1：%2，累计%3。</translation>
        </message>
        <message>
            <source>%1 wins the frame: %2.</source>
            <translation>%1赢得本局：%2。</translation>
        </message>
        <message>
            <source>Overruled by %1.</source>
            <translation>由%1改判。</translation>
        </message>
    </context>
    <context>
        <name>RulingWords</name>
        <message>
            <source>a ball</source>
            <translation>一颗球</translation>
        </message>
        <message>
            <source>another ball</source>
            <translation>另一颗球</translation>
        </message>
        <message>
            <source>Which ball was met first, %1 or %2?</source>
            <translation>先碰到的是哪颗球，%1还是%2？</translation>
        </message>
        <message>
            <source>Did %1 touch a cushion?</source>
            <translation>%1碰到库边了吗？</translation>
        </message>
        <message>
            <source>Did %1 fall?</source>
            <translation>%1落袋了吗？</translation>
        </message>
        <message>
            <source>Where did %1 end: on the table, in a pocket or off the table?</source>
            <translation>%1最后在哪里：台面上、袋里还是台外？</translation>
        </message>
        <message>
            <source>Did %1 leave the table and touch anything before it came back?</source>
            <translation>%1是否离开台面，并在回到台面之前碰到了别的东西？</translation>
        </message>
        <message>
            <source>Did somebody touch %1?</source>
            <translation>有人碰到%1吗？</translation>
        </message>
        <message>
            <source>Was the cue ball struck twice? It lay very close to %1.</source>
            <translation>母球是否被连击？它离%1非常近。</translation>
        </message>
        <message>
            <source>Was %1 declared frozen to the cushion?</source>
            <translation>是否已声明%1贴库？</translation>
        </message>
        <message>
            <source>Which was which, %1 and %2?</source>
            <translation>哪颗是%1，哪颗是%2？</translation>
        </message>
        <message>
            <source>Did %1 lie behind the head string?</source>
            <translation>%1是否在开球线后？</translation>
        </message>
        <message>
            <source>Was %1 called in that pocket?</source>
            <translation>是否指定%1进这个袋？</translation>
        </message>
        <message>
            <source>the first player</source>
            <translation>第一位球员</translation>
        </message>
        <message>
            <source>the second player</source>
            <translation>第二位球员</translation>
        </message>
        <message>
            <source>the cue ball fell or left the table</source>
            <translation>母球落袋或离台</translation>
        </message>
        <message>
            <source>%1 was met first</source>
            <translation>先碰到%1</translation>
        </message>
        <message>
            <source>a wrong ball</source>
            <translation>错误的球</translation>
        </message>
        <message>
            <source>no ball was met</source>
            <translation>没有碰到任何球</translation>
        </message>
        <message>
            <source>nothing fell and no ball met a cushion after the contact</source>
            <translation>碰球后无球落袋，也无球碰库</translation>
        </message>
        <message>
            <source>no foot was on the floor</source>
            <translation>双脚离地</translation>
        </message>
        <message>
            <source>%1 left the table</source>
            <translation>%1离台</translation>
        </message>
        <message>
            <source>%1 was touched</source>
            <translation>%1被触碰</translation>
        </message>
        <message>
            <source>the cue ball was struck twice</source>
            <translation>连击母球</translation>
        </message>
        <message>
            <source>the cue ball was pushed</source>
            <translation>推杆</translation>
        </message>
        <message>
            <source>balls were still moving</source>
            <translation>球尚未静止</translation>
        </message>
        <message>
            <source>the cue ball was not placed behind the head string</source>
            <translation>母球没有摆在开球线后</translation>
        </message>
        <message>
            <source>the cue ball did not cross the head string before it met %1</source>
            <translation>母球碰到%1之前没有越过开球线</translation>
        </message>
        <message>
            <source>the cue was laid on the table to aim</source>
            <translation>将球杆放在台上瞄准</translation>
        </message>
        <message>
            <source>it was the other's turn</source>
            <translation>没有轮到该球员</translation>
        </message>
        <message>
            <source>the time was over</source>
            <translation>超时</translation>
        </message>
        <message>
            <source>the rack template was in the way</source>
            <translation>摆球模板妨碍了球</translation>
        </message>
        <message>
            <source>unsportsmanlike conduct</source>
            <translation>违反体育道德的行为</translation>
        </message>
        <message>
            <source>too few balls were driven to a cushion on the break</source>
            <translation>开球时碰库的球太少</translation>
        </message>
        <message>
            <source>Did balls still move when the shot began?</source>
            <translation>这一杆开始时球还在动吗？</translation>
        </message>
        <message>
            <source>Did the cue ball lie behind the head string?</source>
            <translation>母球在开球线后吗？</translation>
        </message>
        <message>
            <source>The film does not show the shot well enough. What happened?</source>
            <translation>视频未能足够清楚地拍到这一杆。发生了什么？</translation>
        </message>
        <message>
            <source>Who plays the solids and who the stripes?</source>
            <translation>谁打全色球，谁打花色球？</translation>
        </message>
        <message>
            <source>How many balls fell or passed the head string on the break?</source>
            <translation>开球时有多少颗球落袋或越过开球线？</translation>
        </message>
        <message>
            <source>Was a push-out announced?</source>
            <translation>是否声明了推球？</translation>
        </message>
        <message>
            <source>Was the player told of two fouls in a row?</source>
            <translation>是否提醒过该球员已连续两次犯规？</translation>
        </message>
        <message>
            <source>Other balls lie on the table than the shots before left there. Which are in play?</source>
            <translation>台上的球与前面各杆打完后剩下的不一致。场上有效的是哪些球？</translation>
        </message>
        <message>
            <source>The rules do not spell this case out. How is it ruled?</source>
            <translation>规则没有写明这种情况。如何判罚？</translation>
        </message>
        <message>
            <source>The frame was over before this shot. Was it?</source>
            <translation>这一杆之前本局已经结束。是这样吗？</translation>
        </message>
        <message>
            <source>play from here</source>
            <translation>接受现有球形继续打</translation>
        </message>
        <message>
            <source>take the cue ball in hand</source>
            <translation>以自由球继续</translation>
        </message>
        <message>
            <source>take it behind the head string</source>
            <translation>以开球线后自由球继续</translation>
        </message>
        <message>
            <source>have the balls racked and break</source>
            <translation>重新摆球并由自己开球</translation>
        </message>
        <message>
            <source>have %1 break again</source>
            <translation>让%1重新开球</translation>
        </message>
        <message>
            <source>have the 8 spotted and play</source>
            <translation>将8号球重新置球后继续打</translation>
        </message>
        <message>
            <source>have %1 play on</source>
            <translation>让%1继续打</translation>
        </message>
        <message>
            <source>the 8 was potted as called</source>
            <translation>8号球按指定进袋</translation>
        </message>
        <message>
            <source>the 8 fell on a foul</source>
            <translation>8号球进袋时犯规</translation>
        </message>
        <message>
            <source>the 8 fell before its time</source>
            <translation>8号球提前进袋</translation>
        </message>
        <message>
            <source>the 8 fell into a pocket that was not called</source>
            <translation>8号球进了未指定的袋</translation>
        </message>
        <message>
            <source>the 8 left the table</source>
            <translation>8号球离台</translation>
        </message>
        <message>
            <source>the 8 fell on the break</source>
            <translation>开球时8号球进袋</translation>
        </message>
        <message>
            <source>the 8 and the cue ball fell on the break</source>
            <translation>开球时8号球和母球都落袋</translation>
        </message>
        <message>
            <source>the cue ball was lost with the 8 on</source>
            <translation>打8号球时母球落袋或离台</translation>
        </message>
        <message>
            <source>the 9 was potted</source>
            <translation>9号球进袋</translation>
        </message>
        <message>
            <source>the 10 was potted as called</source>
            <translation>10号球按指定进袋</translation>
        </message>
        <message>
            <source>the points are reached</source>
            <translation>达到目标分</translation>
        </message>
        <message>
            <source>three fouls in a row</source>
            <translation>连续三次犯规</translation>
        </message>
        <message>
            <source>the other conceded</source>
            <translation>对手认输</translation>
        </message>
        <message>
            <source>ruled by a person</source>
            <translation>人工判定</translation>
        </message>
        <message>
            <source>the solids</source>
            <translation>全色球</translation>
        </message>
        <message>
            <source>the stripes</source>
            <translation>花色球</translation>
        </message>
        <message>
            <source>cue ball in hand behind the head string</source>
            <translation>开球线后自由球</translation>
        </message>
        <message>
            <source>cue ball in hand</source>
            <translation>自由球</translation>
        </message>
        <message>
            <source>cue ball on the head spot</source>
            <translation>母球放在开球点</translation>
        </message>
        <message>
            <source>cue ball on the centre spot</source>
            <translation>母球放在中心点</translation>
        </message>
        <message>
            <source>rules before 2008</source>
            <translation>2008年以前的规则</translation>
        </message>
        <message>
            <source>house rule</source>
            <translation>自定规则</translation>
        </message>
        <message>
            <source>world rules 2008, %1</source>
            <translation>2008年世界规则，%1</translation>
        </message>
        <message>
            <source>world rules 2016, %1</source>
            <translation>2016年世界规则，%1</translation>
        </message>
    </context>
    <context>
        <name>SessionWords</name>
        <message>
            <source>Practice without a referee</source>
            <translation>无裁判训练</translation>
        </message>
        <message>
            <source>%1 won: %2.</source>
            <translation>%1获胜：%2。</translation>
        </message>
        <message>
            <source>%1 breaks</source>
            <translation>轮到%1开球</translation>
        </message>
        <message>
            <source>%1 is at the table, %2 to %3</source>
            <comment>player, points of the first and the second seat</comment>
            <translation>轮到%1击球，比分%2比%3</translation>
        </message>
        <message>
            <source>%1 is on the 8</source>
            <translation>%1打8号球</translation>
        </message>
        <message>
            <source>%1 is at the table and has %2</source>
            <translation>轮到%1击球，打%2</translation>
        </message>
        <message>
            <source>%1 is at the table</source>
            <translation>轮到%1击球</translation>
        </message>
        <message>
            <source>Choose the ball that is played for, then say what happened.</source>
            <translation>先选要打的球，再说明结果。</translation>
        </message>
        <message>
            <source>%1; choose its pocket.</source>
            <translation>%1；请选袋口。</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1打向%2</translation>
        </message>
        <message>
            <source>%1, cut %2</source>
            <comment>ball to pocket, angle</comment>
            <translation>%1，切角%2</translation>
        </message>
        <message>
            <source>%1  %2, %3</source>
            <comment>rank, plan, speed</comment>
            <translation>%1  %2，%3</translation>
        </message>
        <message>
            <source>easy</source>
            <translation>容易</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>中等</translation>
        </message>
        <message>
            <source>hard</source>
            <translation>难</translation>
        </message>
        <message>
            <source>very hard</source>
            <translation>很难</translation>
        </message>
        <message>
            <source>%1 for this player: the aim may be off by %2 to the left and %3 to the right.</source>
            <translation>对该球员来说%1：瞄准允许偏左%2、偏右%3。</translation>
        </message>
        <message>
            <source>The record holds no measured pot of this player; a club player stands in.</source>
            <translation>记录中没有该球员测得的进攻球；以俱乐部球员代替。</translation>
        </message>
        <message numerus="yes">
            <source>Aim spread %1, from %n measured shot(s).</source>
            <translation>
                <numerusform>瞄准散布%1，来自%n杆实测。</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SetUpWords</name>
        <message>
            <source>%1 to the foot</source>
            <translation>向置球端%1</translation>
        </message>
        <message>
            <source>%1 to the head</source>
            <translation>向开球端%1</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>向左%1</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>向右%1</translation>
        </message>
        <message>
            <source>%1 is not at its place.</source>
            <translation>%1不在位置上。</translation>
        </message>
        <message>
            <source>%1: %2 off, stands.</source>
            <translation>%1：偏差%2，已到位。</translation>
        </message>
        <message>
            <source>%1: %2 off; move it %3.</source>
            <comment>a ball, a length, where</comment>
            <translation>%1：偏差%2；请移动：%3。</translation>
        </message>
        <message>
            <source>Loose balls are missing, or lie too close to each other or to a cushion.</source>
            <translation>散球缺少，或彼此、距库边太近。</translation>
        </message>
        <message>
            <source>The cue ball in hand is not where it may lie.</source>
            <translation>手中母球未放在允许的位置。</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) lie there that do not belong to the set-up.</source>
            <translation>
                <numerusform>有%n个球不属于该摆位。</numerusform>
            </translation>
        </message>
        <message>
            <source>Set up within %1: the try may begin.</source>
            <translation>摆位误差在%1以内：可以开始。</translation>
        </message>
        <message>
            <source>Not yet within %1.</source>
            <translation>尚未在%1以内。</translation>
        </message>
    </context>
    <context>
        <name>SetupSteps</name>
        <message>
            <source>Table</source>
            <translation>球台</translation>
        </message>
        <message>
            <source>Balls</source>
            <translation>球</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>相机</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>镜头</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>标记</translation>
        </message>
        <message>
            <source>Rig</source>
            <translation>机位</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>检查</translation>
        </message>
        <message>
            <source>Trust</source>
            <translation>可信度</translation>
        </message>
        <message>
            <source>Projector</source>
            <translation>投影仪</translation>
        </message>
        <message>
            <source>Keep</source>
            <translation>保存</translation>
        </message>
        <message>
            <source>Choose the table's size, or measure it from cushion nose to cushion nose.</source>
            <translation>选择球台尺寸，或从前沿到前沿测量。</translation>
        </message>
        <message>
            <source>A ball's size tells how high its middle lies above the cloth, and where a pocket takes it.</source>
            <translation>球的大小决定球心离台呢多高，以及球到哪里会落袋。</translation>
        </message>
        <message>
            <source>Film the whole table as you will film play, and choose that film or a still of it.</source>
            <translation>按以后拍球的方式拍下整张球台，再选择该视频或由它截取的照片。</translation>
        </message>
        <message>
            <source>Every lens bends the picture. Stills of a printed board show how much, and where.</source>
            <translation>每个镜头都会使画面变形。拍摄打印的标定板，可知变形有多大、在哪里。</translation>
        </message>
        <message>
            <source>Four printed tags on the rails tell where the camera sits.</source>
            <translation>台边上的四个打印标记能确定相机的位置。</translation>
        </message>
        <message>
            <source>Lens, tags and film together give the camera's place over this table.</source>
            <translation>镜头、标记和视频合在一起，得出相机在这张球台上方的位置。</translation>
        </message>
        <message>
            <source>Does everything belong together? The film itself is asked.</source>
            <translation>各部分是否相符？由视频本身来检验。</translation>
        </message>
        <message>
            <source>How far a ball may be off, where that comes from, and what it is worth in a shot.</source>
            <translation>球的位置可能差多少、误差从何而来，以及对一杆球有多大影响。</translation>
        </message>
        <message>
            <source>If a projector hangs over the table: let the camera see where its light falls.</source>
            <translation>如果球台上方装有投影仪：让相机看看它的光落在哪里。</translation>
        </message>
        <message>
            <source>Save the files; films of this table are measured with them from now on.</source>
            <translation>保存文件；今后用它们测量这张球台的视频。</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>注意安全</translation>
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
            <translation>已找到</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>未找到</translation>
        </message>
        <message>
            <source>old layout: print the board anew</source>
            <translation>旧版式：请重新打印标定板</translation>
        </message>
        <message>
            <source>mirrored: not used</source>
            <translation>镜像：未使用</translation>
        </message>
        <message>
            <source>blurred: not used</source>
            <translation>模糊：未使用</translation>
        </message>
        <message>
            <source>same as %1: counts once</source>
            <translation>与%1相同：只算一次</translation>
        </message>
        <message>
            <source>other size: not used</source>
            <translation>尺寸不同：未使用</translation>
        </message>
        <message>
            <source>not a picture: not used</source>
            <translation>不是图片：未使用</translation>
        </message>
        <message>
            <source>Looking for the board</source>
            <translation>正在寻找标定板</translation>
        </message>
        <message>
            <source>Looking for the tags</source>
            <translation>正在寻找标记</translation>
        </message>
        <message>
            <source>Looking for the cushions</source>
            <translation>正在寻找库边</translation>
        </message>
        <message>
            <source>Looking at the film</source>
            <translation>正在查看视频</translation>
        </message>
        <message>
            <source>Comparing what could be wrong</source>
            <translation>正在比较可能的错误</translation>
        </message>
        <message>
            <source>Working it out</source>
            <translation>正在计算</translation>
        </message>
        <message>
            <source>The lens foretells the board's corners to %1 px (rms) over %2 of %3 stills, out to %4 % of the way to the picture's corners.</source>
            <translation>镜头对标定板角点的预测误差为%1 px（均方根），使用了%3张照片中的%2张，最远达到画面中心至四角的%4%。</translation>
        </message>
        <message>
            <source>Beyond that the lens is a guess: add stills with the board in the corners.</source>
            <translation>更远处的镜头畸变只是推测：请补拍标定板位于四角的照片。</translation>
        </message>
        <message>
            <source>Turn</source>
            <translation>旋转</translation>
        </message>
        <message>
            <source>Image size</source>
            <translation>图像尺寸</translation>
        </message>
        <message>
            <source>Lens</source>
            <translation>镜头</translation>
        </message>
        <message>
            <source>Camera's place</source>
            <translation>相机位置</translation>
        </message>
        <message>
            <source>Height of the tags</source>
            <translation>标记高度</translation>
        </message>
        <message>
            <source>Finding the ball</source>
            <translation>球的检测</translation>
        </message>
        <message>
            <source>Ball and bed</source>
            <translation>球与台面</translation>
        </message>
        <message>
            <source>Rows read in turn</source>
            <translation>逐行读出（卷帘快门）</translation>
        </message>
        <message>
            <source>Measure the tags' corners again with a steel rule, and lay them far apart.</source>
            <translation>用钢尺重新量标记的四角，并把标记放得尽量分开。</translation>
        </message>
        <message>
            <source>Add stills of the board, tilted and out to the picture's corners.</source>
            <translation>补拍标定板的照片，要有倾斜，并延伸到画面四角。</translation>
        </message>
        <message>
            <source>Measure the height of the tags above the cloth with a depth gauge.</source>
            <translation>用深度尺量标记离台呢的高度。</translation>
        </message>
        <message>
            <source>Use a larger picture, more even light, or a cloth that differs from the balls.</source>
            <translation>请用更大的画面、更均匀的光线，或与球颜色分明的台呢。</translation>
        </message>
        <message>
            <source>Nothing is gained here: balls and bed are as even as they are made.</source>
            <translation>这一项无法改进：球和台面本身的加工精度就是如此。</translation>
        </message>
        <message>
            <source>A camera that reads all rows at once would help moving balls; those at rest need none.</source>
            <translation>能同时读出所有行的相机对运动的球有帮助；静止的球不需要。</translation>
        </message>
        <message>
            <source>Cut %1 ± %2; the ball comes %3 mm (rms) off the pocket's middle, where there are %4 mm to either side. Somebody who plays perfectly on these places pots %5 %.</source>
            <translation>切角%1 ± %2；球到袋口时偏离袋口中心%3 mm（均方根），两侧各有%4 mm余量。即使出杆完美，按这些位置来打的进球率为%5%。</translation>
        </message>
    </context>
    <context>
        <name>ShotChartWords</name>
        <message>
            <source>%1, shot %2</source>
            <translation>%1，第%2杆</translation>
        </message>
        <message>
            <source>the last %1 of %2 shots</source>
            <translation>%2杆中的最后%1杆</translation>
        </message>
        <message>
            <source>Deliveries on the target</source>
            <translation>出杆分布图</translation>
        </message>
        <message>
            <source>aim: left – right</source>
            <translation>瞄准：左 – 右</translation>
        </message>
        <message>
            <source>speed: harder, softer</source>
            <translation>力度：上大，下小</translation>
        </message>
        <message>
            <source>Hollow: missed pots. Ellipse: 95 of 100 shots.</source>
            <translation>空心：未进的进攻球。椭圆：100杆中的95杆。</translation>
        </message>
        <message>
            <source>Where the tip met the ball</source>
            <translation>击点位置</translation>
        </message>
        <message>
            <source>side %1 R, height %2 R</source>
            <translation>左右%1 R，高低%2 R</translation>
        </message>
        <message>
            <source>As seen along the cue. Dashed: miscue limit. Hollow: missed pots.</source>
            <translation>沿球杆方向看。虚线：滑杆极限。空心：未进的进攻球。</translation>
        </message>
        <message>
            <source>Speed asked and delivered</source>
            <translation>球速：要求与实际</translation>
        </message>
        <message>
            <source>On the dashed line both agree. Hollow: missed pots.</source>
            <translation>虚线上二者一致。空心：未进的进攻球。</translation>
        </message>
        <message>
            <source>Where the cue ball came to rest</source>
            <translation>母球停位</translation>
        </message>
        <message>
            <source>along the table, + to the foot, mm</source>
            <translation>沿台长，向置球端为正，mm</translation>
        </message>
        <message>
            <source>across the table, mm</source>
            <translation>沿台宽，mm</translation>
        </message>
        <message>
            <source>%1 mm along, %2 mm across</source>
            <translation>沿台长%1 mm，沿台宽%2 mm</translation>
        </message>
        <message>
            <source>The middle is where it was asked to rest. Ellipse: 95 of 100 shots.</source>
            <translation>中心为要求的停位。椭圆：100杆中的95杆。</translation>
        </message>
        <message>
            <source>Miss map</source>
            <translation>失误分布图</translation>
        </message>
        <message>
            <source>%1 thick, %2 thin</source>
            <translation>偏厚%1，偏薄%2</translation>
        </message>
        <message>
            <source>too thick, %1, cut %2</source>
            <translation>偏厚，%1，切角%2</translation>
        </message>
        <message>
            <source>too thin, %1, cut %2</source>
            <translation>偏薄，%1，切角%2</translation>
        </message>
        <message>
            <source>Object balls that were missed, head on the left. Filled: too thick, hollow: too thin. At the pockets: what was missed there.</source>
            <translation>未进的目标球，开球端在左。实心：偏厚，空心：偏薄。袋口处：在该袋未进的球。</translation>
        </message>
        <message>
            <source>Where nobody said what was meant, the mean of the repeated set-up stands in.</source>
            <translation>无人说明意图时，以重复摆位的平均值代替。</translation>
        </message>
        <message>
            <source>aim %1°, speed %2</source>
            <translation>瞄准%1°，力度%2</translation>
        </message>
        <message>
            <source>asked, %1</source>
            <comment>a unit of speed</comment>
            <translation>要求，%1</translation>
        </message>
        <message>
            <source>delivered, %1</source>
            <comment>a unit of speed</comment>
            <translation>实际，%1</translation>
        </message>
        <message>
            <source>asked %1, delivered %2</source>
            <comment>two speeds</comment>
            <translation>要求%1，实际%2</translation>
        </message>
        <message>
            <source>Where nobody said, the leave of the plan stands in that the shot was read as.</source>
            <translation>无人说明时，以该杆所识别方案的停位代替。</translation>
        </message>
    </context>
    <context>
        <name>ShotComparison</name>
        <message>
            <source>Aim</source>
            <translation>瞄准</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>球速</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>击点左右</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>击点高低</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>抬杆角</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>切角</translation>
        </message>
        <message>
            <source>Line error</source>
            <translation>线路误差</translation>
        </message>
        <message>
            <source>Cue ball at rest</source>
            <translation>母球停点</translation>
        </message>
        <message>
            <source>%1 apart</source>
            <translation>相距%1</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>结果</translation>
        </message>
    </context>
    <context>
        <name>ShotWords</name>
        <message>
            <source>%1 from the foot cushion</source>
            <translation>距置球端库边%1</translation>
        </message>
        <message>
            <source>%1 from the head cushion</source>
            <translation>距开球端库边%1</translation>
        </message>
        <message>
            <source>%1 from the left</source>
            <translation>距左库%1</translation>
        </message>
        <message>
            <source>%1 from the right</source>
            <translation>距右库%1</translation>
        </message>
        <message>
            <source>the cue ball was hidden</source>
            <translation>母球被遮住</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>瞄准</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>球速</translation>
        </message>
        <message>
            <source>Tip side</source>
            <translation>击点左右</translation>
        </message>
        <message>
            <source>nothing that it did shows the spin</source>
            <translation>母球的走线看不出旋转</translation>
        </message>
        <message>
            <source>Tip height</source>
            <translation>击点高低</translation>
        </message>
        <message>
            <source>Elevation</source>
            <translation>抬杆角</translation>
        </message>
        <message>
            <source>no curve and no hop</source>
            <translation>没有弧线，也没有跳起</translation>
        </message>
        <message>
            <source>cut %1</source>
            <translation>切角%1</translation>
        </message>
        <message>
            <source>%1 to the ball</source>
            <translation>距目标球%1</translation>
        </message>
        <message>
            <source>%1 to the pocket</source>
            <translation>距袋口%1</translation>
        </message>
        <message>
            <source>%1 left the pocket's middle by %2</source>
            <translation>%1偏离袋口中心%2</translation>
        </message>
        <message>
            <source>, %1 at the pocket</source>
            <translation>，袋口处%1</translation>
        </message>
        <message>
            <source>: cut too much, thin</source>
            <translation>：打薄了</translation>
        </message>
        <message>
            <source>: cut too little, thick</source>
            <translation>：打厚了</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <comment>ball, along, across</comment>
            <translation>%1：%2，%3</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) did not move.</source>
            <translation>
                <numerusform>%n颗球没有移动。</numerusform>
            </translation>
        </message>
        <message>
            <source>corrected by hand</source>
            <translation>人工更正</translation>
        </message>
        <message>
            <source>Not a clean reading: %1.</source>
            <translation>测量有疑点：%1。</translation>
        </message>
        <message>
            <source>Ruled before: %1</source>
            <translation>原判罚：%1</translation>
        </message>
        <message>
            <source>To be settled: %1</source>
            <translation>待定：%1</translation>
        </message>
        <message>
            <source>Ruled before a correction: %1</source>
            <translation>更正之前的判罚：%1</translation>
        </message>
    </context>
    <context>
        <name>TradeWords</name>
        <message>
            <source>%1 o'clock</source>
            <comment>a place on the ball's face</comment>
            <translation>%1点钟</translation>
        </message>
        <message>
            <source>half past twelve</source>
            <translation>12点半</translation>
        </message>
        <message>
            <source>half past one</source>
            <translation>1点半</translation>
        </message>
        <message>
            <source>half past two</source>
            <translation>2点半</translation>
        </message>
        <message>
            <source>half past three</source>
            <translation>3点半</translation>
        </message>
        <message>
            <source>half past four</source>
            <translation>4点半</translation>
        </message>
        <message>
            <source>half past five</source>
            <translation>5点半</translation>
        </message>
        <message>
            <source>half past six</source>
            <translation>6点半</translation>
        </message>
        <message>
            <source>half past seven</source>
            <translation>7点半</translation>
        </message>
        <message>
            <source>half past eight</source>
            <translation>8点半</translation>
        </message>
        <message>
            <source>half past nine</source>
            <translation>9点半</translation>
        </message>
        <message>
            <source>half past ten</source>
            <translation>10点半</translation>
        </message>
        <message>
            <source>half past eleven</source>
            <translation>11点半</translation>
        </message>
        <message>
            <source>the cue ball</source>
            <translation>母球</translation>
        </message>
        <message>
            <source>the %1</source>
            <comment>an object ball by its number</comment>
            <translation>%1号球</translation>
        </message>
        <message>
            <source>The cue ball</source>
            <translation>母球</translation>
        </message>
        <message>
            <source>The %1</source>
            <comment>an object ball by its number</comment>
            <translation>%1号球</translation>
        </message>
        <message>
            <source>cue</source>
            <comment>cue ball, in a narrow list</comment>
            <translation>母球</translation>
        </message>
        <message>
            <source>head-left</source>
            <translation>开球端左袋</translation>
        </message>
        <message>
            <source>head-right</source>
            <translation>开球端右袋</translation>
        </message>
        <message>
            <source>side-left</source>
            <translation>左中袋</translation>
        </message>
        <message>
            <source>side-right</source>
            <translation>右中袋</translation>
        </message>
        <message>
            <source>foot-left</source>
            <translation>置球端左袋</translation>
        </message>
        <message>
            <source>foot-right</source>
            <translation>置球端右袋</translation>
        </message>
        <message>
            <source>the head cushion</source>
            <translation>开球端库边</translation>
        </message>
        <message>
            <source>the foot cushion</source>
            <translation>置球端库边</translation>
        </message>
        <message>
            <source>the left-head cushion</source>
            <translation>左库（近开球端）</translation>
        </message>
        <message>
            <source>the left-foot cushion</source>
            <translation>左库（近置球端）</translation>
        </message>
        <message>
            <source>the right-head cushion</source>
            <translation>右库（近开球端）</translation>
        </message>
        <message>
            <source>the right-foot cushion</source>
            <translation>右库（近置球端）</translation>
        </message>
        <message>
            <source>made</source>
            <translation>进球</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>未进</translation>
        </message>
        <message>
            <source>safety</source>
            <translation>防守</translation>
        </message>
        <message>
            <source>scratch</source>
            <translation>母球落袋</translation>
        </message>
        <message>
            <source>foul</source>
            <translation>犯规</translation>
        </message>
        <message>
            <source>break</source>
            <translation>开球</translation>
        </message>
        <message>
            <source>certain</source>
            <translation>确定</translation>
        </message>
        <message>
            <source>likely</source>
            <translation>很可能</translation>
        </message>
        <message>
            <source>cannot be decided from the film: please check</source>
            <translation>视频无法判定：请核对</translation>
        </message>
        <message>
            <source>eight-ball</source>
            <translation>八球</translation>
        </message>
        <message>
            <source>nine-ball</source>
            <translation>九球</translation>
        </message>
        <message>
            <source>ten-ball</source>
            <translation>十球</translation>
        </message>
        <message>
            <source>straight pool</source>
            <translation>14-1连续球</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>two balls</comment>
            <translation>%1碰到%2</translation>
        </message>
        <message>
            <source>%1 meets a ball</source>
            <translation>%1碰到一颗球</translation>
        </message>
        <message>
            <source>%1 meets %2</source>
            <comment>ball and cushion</comment>
            <translation>%1碰到%2</translation>
        </message>
        <message>
            <source>%1 meets a cushion</source>
            <translation>%1碰到库边</translation>
        </message>
        <message>
            <source>%1 falls, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1落袋，%2</translation>
        </message>
        <message>
            <source>%1 falls</source>
            <translation>%1落袋</translation>
        </message>
        <message>
            <source>%1 leaves the table</source>
            <translation>%1离台</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>ball and pocket</comment>
            <translation>%1号球打向%2</translation>
        </message>
        <message>
            <source>off %1</source>
            <comment>the first ball met</comment>
            <translation>打%1</translation>
        </message>
        <message>
            <source>no ball met</source>
            <translation>没有碰到球</translation>
        </message>
        <message>
            <source>thin</source>
            <translation>偏薄</translation>
        </message>
        <message>
            <source>thick</source>
            <translation>偏厚</translation>
        </message>
        <message>
            <source>Shot %1: the break</source>
            <translation>第%1杆：开球</translation>
        </message>
        <message>
            <source>no ball</source>
            <translation>无</translation>
        </message>
        <message>
            <source>Shot %1: met %2, %3</source>
            <translation>第%1杆：碰球：%2，%3</translation>
        </message>
        <message>
            <source>missed %1</source>
            <comment>thin or thick</comment>
            <translation>未进，%1</translation>
        </message>
        <message>
            <source>Shot %1: %2 to %3, %4</source>
            <translation>第%1杆：%2打向%3，%4</translation>
        </message>
        <message>
            <source>Struck at the centre, as far as can be seen.</source>
            <translation>就画面所见，击点在球心。</translation>
        </message>
        <message>
            <source>Struck at about %1, %2 from the centre.</source>
            <translation>击点约在%1方向，距球心%2。</translation>
        </message>
        <message>
            <source>pocketed: %1</source>
            <comment>balls</comment>
            <translation>落袋：%1</translation>
        </message>
        <message>
            <source>also pocketed: %1</source>
            <comment>balls</comment>
            <translation>同时落袋：%1</translation>
        </message>
    </context>
    <context>
        <name>ferrule::AboutPage</name>
        <message>
            <source>About Ferrule</source>
            <translation>关于 Ferrule</translation>
        </message>
        <message>
            <source>Ferrule %1 turns film of a cue-sports table into measured shots.</source>
            <translation>Ferrule %1 把球台视频变成测量过的击球。</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>注意安全</translation>
        </message>
        <message>
            <source>Hang a camera or a projector over people only from fixings rated for the load, with a safety tether.</source>
            <translation>在人的上方悬挂相机或投影仪，必须使用额定承重的固定件，并加装安全绳。</translation>
        </message>
        <message>
            <source>Leave mains work to a licensed electrician; local codes come first.</source>
            <translation>市电作业请交给持证电工；以当地法规为准。</translation>
        </message>
        <message>
            <source>Never look into the projector's beam, and never let a person lean into it.</source>
            <translation>切勿直视投影光束，也不要让人探入光束。</translation>
        </message>
        <message>
            <source>Jump shots: protect the eyes and keep the space around the table clear.</source>
            <translation>跳球：保护眼睛，球台周围不要有人。</translation>
        </message>
        <message>
            <source>Film people, minors above all, only with consent, and as local law allows.</source>
            <translation>拍摄他人，尤其是未成年人，须先征得同意，并遵守当地法律。</translation>
        </message>
        <message>
            <source>The numbers carry their uncertainty: believe no millimetre that the error map does not give.</source>
            <translation>数值都有不确定度：误差图达不到的毫米数不要相信。</translation>
        </message>
        <message>
            <source>Your data</source>
            <translation>您的数据</translation>
        </message>
        <message>
            <source>Everything stays on this computer, in files that only you can read; nothing is sent anywhere.</source>
            <translation>所有数据都留在本机，只有您能读取；不会发送到任何地方。</translation>
        </message>
        <message>
            <source>Licence</source>
            <translation>许可</translation>
        </message>
        <message>
            <source>Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
            <translation>自由软件，遵循 GNU General Public License 第 3 版或更高版本。不提供任何担保。</translation>
        </message>
        <message>
            <source>Made with</source>
            <translation>所用程序库</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallTray</name>
        <message>
            <source>Balls off the table</source>
            <translation>台外的球</translation>
        </message>
        <message>
            <source>Every ball is on the table.</source>
            <translation>所有的球都在台上。</translation>
        </message>
        <message>
            <source>Off the table:</source>
            <translation>台外：</translation>
        </message>
        <message>
            <source>Put %1 on the table</source>
            <translation>把%1放到台上</translation>
        </message>
    </context>
    <context>
        <name>ferrule::BallsPage</name>
        <message>
            <source>A ball's diameter</source>
            <translation>球的直径</translation>
        </message>
        <message>
            <source>&amp;Diameter</source>
            <translation>直径(&amp;D)</translation>
        </message>
        <message>
            <source>A ball's weight</source>
            <translation>球的重量</translation>
        </message>
        <message>
            <source> g</source>
            <translation> g</translation>
        </message>
        <message>
            <source>&amp;Weight</source>
            <translation>重量(&amp;W)</translation>
        </message>
        <message>
            <source>Lay five balls in a row against a straight edge and measure from end to end: a fifth of it is the diameter, five times as exact. Balls of the world specification have 57.15 mm and 156 to 170 g.</source>
            <translation>将五颗球沿直尺排成一行，从一端量到另一端：其五分之一就是直径，精度提高到五倍。符合世界规格的球为57.15 mm、156至170 g。</translation>
        </message>
        <message>
            <source>the balls' diameter</source>
            <translation>球的直径</translation>
        </message>
        <message>
            <source>the balls' weight</source>
            <translation>球的重量</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraChoice</name>
        <message>
            <source>Camera</source>
            <translation>相机</translation>
        </message>
        <message>
            <source>Size and rate of the images</source>
            <translation>图像尺寸与帧率</translation>
        </message>
        <message>
            <source>Choose a film that stands in for the camera</source>
            <translation>选择代替相机的视频</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>视频 (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;所有文件 (*)</translation>
        </message>
        <message>
            <source>A film of this camera, played at its own pace</source>
            <translation>此相机的视频，按原速播放</translation>
        </message>
        <message>
            <source>Set the camera to a fixed focus and exposure: a whole number of mains periods against flicker, short enough that a fast ball is no streak. What set-up was made with must stay.</source>
            <translation>请固定相机的对焦与曝光：曝光取市电周期的整数倍以防闪烁，并短到快球不拖影。设置时的状态必须保持不变。</translation>
        </message>
        <message>
            <source>The rig was made at %1 × %2; images of another size cannot be measured with it.</source>
            <translation>机位按 %1 × %2 得出；其他尺寸的图像无法用它测量。</translation>
        </message>
        <message>
            <source>A film in place of a camera</source>
            <translation>用视频代替相机</translation>
        </message>
        <message>
            <source>No camera was found: connect one, or let a film stand in to try it.</source>
            <translation>未找到相机：请连接一台，或用视频代替试用。</translation>
        </message>
        <message>
            <source>Everything happens as with a camera, also when measuring cannot keep up.</source>
            <translation>一切与使用相机时相同，包括测量跟不上的情形。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraPage</name>
        <message>
            <source>Such as: wide camera, hall</source>
            <translation>例如：广角相机，球房</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>相机(&amp;C)</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>视频</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>画面</translation>
        </message>
        <message>
            <source>Choose a &amp;film or still…</source>
            <translation>选择视频或照片(&amp;F)…</translation>
        </message>
        <message>
            <source>Fixed focus and exposure, a whole number of mains periods, the highest image rate; stabilisation, zoom and lens correction off. Every later step needs pictures of this size.</source>
            <translation>锁定对焦和曝光，曝光时间取电源周期的整数倍，用最高帧率；关闭防抖、变焦和镜头校正。后面每一步都需要这一尺寸的画面。</translation>
        </message>
        <message>
            <source>A camera overhead hangs over people: fix it to the building's structure with fittings rated for its load, never to a ceiling tile, and add a steel tether to a second point. Work from a proper ladder with a second person, not from the table, and secure yourself against a fall. Fixed mains wiring is the work of a licensed electrician; lead no cable where people walk. Local codes come first.</source>
            <translation>装在上方的相机悬在人的头顶：要用承重合格的配件固定在建筑结构上，绝不可固定在天花板的板块上，并用钢丝绳系到第二个固定点。作业时使用合格的梯子并有第二人在场，不要站在球台上，并做好防坠落措施。固定电源线路须由持证电工施工；不要把电缆拉过有人走动的地方。当地规范优先。</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>还没有</translation>
        </message>
        <message>
            <source>not known yet</source>
            <translation>尚不清楚</translation>
        </message>
        <message>
            <source>%1 × %2 px</source>
            <translation>%1 × %2 px</translation>
        </message>
        <message>
            <source>%1, %2 images a second</source>
            <translation>%1，每秒%2帧</translation>
        </message>
        <message>
            <source>%1, turned by %2° as its file says</source>
            <translation>%1，按文件标注旋转%2°</translation>
        </message>
        <message>
            <source>the camera's name</source>
            <translation>相机名称</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CameraSource</name>
        <message>
            <source>The camera %1 sends no images (%2). Look at its cable, whether another program uses it, and whether this program may use cameras.</source>
            <translation>相机 %1 没有图像（%2）。请检查连线、是否被其他程序占用，以及本程序是否有权使用相机。</translation>
        </message>
        <message>
            <source>The camera %1 is gone; what it saw until then is kept.</source>
            <translation>相机 %1 已断开；此前看到的内容予以保留。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ChainRow</name>
        <message>
            <source>then</source>
            <translation>然后</translation>
        </message>
        <message>
            <source>Sensor</source>
            <translation>传感器</translation>
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
            <translation>全部相符</translation>
        </message>
        <message>
            <source>The camera has moved</source>
            <translation>相机移动了</translation>
        </message>
        <message>
            <source>Lens of another camera</source>
            <translation>镜头属于另一台相机</translation>
        </message>
        <message>
            <source>Corrected twice</source>
            <translation>校正了两次</translation>
        </message>
        <message>
            <source>Not corrected</source>
            <translation>没有校正</translation>
        </message>
        <message>
            <source>Other size of picture</source>
            <translation>画面尺寸不同</translation>
        </message>
        <message>
            <source>Tags at another height</source>
            <translation>标记高度不同</translation>
        </message>
        <message>
            <source>A tag at another place</source>
            <translation>有标记不在原位</translation>
        </message>
        <message>
            <source>Two tags swapped</source>
            <translation>两个标记放反了</translation>
        </message>
        <message>
            <source>A tag turned</source>
            <translation>有标记转了方向</translation>
        </message>
        <message>
            <source>Other size of table</source>
            <translation>球台尺寸不同</translation>
        </message>
        <message>
            <source>Something does not fit</source>
            <translation>有不相符之处</translation>
        </message>
        <message>
            <source>Every correction between sensor and table, in order</source>
            <translation>从传感器到球台的每一项校正，按顺序</translation>
        </message>
        <message>
            <source>&amp;Check this film</source>
            <translation>检查此视频(&amp;C)</translation>
        </message>
        <message>
            <source>Check &amp;another film…</source>
            <translation>检查另一段视频(&amp;A)…</translation>
        </message>
        <message>
            <source>Add a &amp;lens to the chain…</source>
            <translation>在校正链中加入镜头(&amp;L)…</translation>
        </message>
        <message>
            <source>What the film shows</source>
            <translation>视频显示的情况</translation>
        </message>
        <message>
            <source>What else was tried</source>
            <translation>还考虑过的情况</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>还没有球台的视频；请在“相机”步骤中选择。</translation>
        </message>
        <message>
            <source>Add a lens to the chain</source>
            <translation>在校正链中加入镜头</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>镜头文件 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Not checked yet</source>
            <translation>尚未检查</translation>
        </message>
        <message>
            <source>There is no rig yet</source>
            <translation>还没有机位</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 (sure to %2 %)</source>
            <comment>what the check found, how sure</comment>
            <translation>%1（把握%2%）</translation>
        </message>
        <message>
            <source>As it is, a ball's place is off by %1 (rms), by %2 at the worst place: %3 toward the foot and %4 to the left of the middle.</source>
            <translation>照现在这样，球的位置误差为%1（均方根），最差处为%2：位于台面中心向置球端%3、向左%4。</translation>
        </message>
        <message>
            <source>%1: probability %2 %, misses what is seen by %3 standard deviations</source>
            <translation>%1：概率%2%，与所见相差%3个标准差</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CompareView</name>
        <message>
            <source>Plan of the shot that is held</source>
            <translation>固定的一杆的俯视图</translation>
        </message>
        <message>
            <source>Plan of the shot that is compared with it</source>
            <translation>与之比较的一杆的俯视图</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>数值</translation>
        </message>
        <message>
            <source>Held</source>
            <translation>固定</translation>
        </message>
        <message>
            <source>Other</source>
            <translation>另一杆</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>差值</translation>
        </message>
        <message>
            <source>What differs between the two shots</source>
            <translation>两杆的差别</translation>
        </message>
        <message>
            <source>Choose the shot that is to be compared.</source>
            <translation>请选择要比较的一杆。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ConsentSection</name>
        <message>
            <source>Filming people, minors above all: ask first, and in writing. For a minor a parent or guardian gives consent before the camera runs; the law where you play may ask for more.</source>
            <translation>拍摄他人，尤其是未成年人：先征求书面同意。未成年人须在开机之前由父母或监护人同意；当地法律可能有更多要求。</translation>
        </message>
        <message>
            <source>Who gave or withdrew it</source>
            <translation>由谁给予或撤回</translation>
        </message>
        <message>
            <source>&amp;By</source>
            <translation>由(&amp;B)</translation>
        </message>
        <message>
            <source>a &amp;parent or guardian</source>
            <translation>父母或监护人(&amp;P)</translation>
        </message>
        <message>
            <source>From this day on</source>
            <translation>自此日起</translation>
        </message>
        <message>
            <source>&amp;On</source>
            <translation>日期(&amp;O)</translation>
        </message>
        <message>
            <source>Unti&amp;l</source>
            <translation>至(&amp;L)</translation>
        </message>
        <message>
            <source>It ends on a day</source>
            <translation>在某日结束</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>最后一天</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>记下</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>取消</translation>
        </message>
        <message>
            <source>Renew…</source>
            <translation>续期…</translation>
        </message>
        <message>
            <source>Note…</source>
            <translation>记下…</translation>
        </message>
        <message>
            <source>Note consent: %1</source>
            <translation>记下同意：%1</translation>
        </message>
        <message>
            <source>Withdraw…</source>
            <translation>撤回…</translation>
        </message>
        <message>
            <source>Withdraw consent: %1</source>
            <translation>撤回同意：%1</translation>
        </message>
        <message>
            <source>Consent given: %1</source>
            <translation>已给予同意：%1</translation>
        </message>
        <message>
            <source>Consent withdrawn: %1</source>
            <translation>已撤回同意：%1</translation>
        </message>
        <message>
            <source>Name of the parent or guardian</source>
            <translation>父母或监护人的姓名</translation>
        </message>
        <message>
            <source>Say who gave or withdrew consent.</source>
            <translation>请说明由谁给予或撤回同意。</translation>
        </message>
        <message>
            <source>The consent would end before it begins; choose a later last day.</source>
            <translation>同意会在开始之前结束；请选择较晚的最后一天。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::CoverageView</name>
        <message>
            <source>The board was seen in %1 % of the picture</source>
            <translation>标定板出现在画面的%1%</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DetailPanel</name>
        <message>
            <source>Left and right exchanged</source>
            <translation>左右对调</translation>
        </message>
        <message>
            <source>Head and foot exchanged</source>
            <translation>两端对调</translation>
        </message>
        <message>
            <source>Spread the balls anew</source>
            <translation>重新散球</translation>
        </message>
        <message>
            <source>Whose run it is; may stay empty</source>
            <translation>这一轮是谁的；可留空</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>球员(&amp;P)</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>常用尺寸，或球台文件的路径</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>球台(&amp;T)</translation>
        </message>
        <message>
            <source>Begin a run</source>
            <translation>开始一轮</translation>
        </message>
        <message>
            <source>Or find the tries in a session that was recorded:</source>
            <translation>或者在已记录的场次中查找：</translation>
        </message>
        <message>
            <source>Recorded session</source>
            <translation>已记录的场次</translation>
        </message>
        <message>
            <source>Count its tries</source>
            <translation>计数</translation>
        </message>
        <message>
            <source>Edit</source>
            <translation>编辑</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>删除</translation>
        </message>
        <message>
            <source>Its runs stay; undo brings it back</source>
            <translation>各轮记录保留；撤销可恢复</translation>
        </message>
        <message>
            <source>Copy and change</source>
            <translation>复制并修改</translation>
        </message>
        <message>
            <source>Export…</source>
            <translation>导出…</translation>
        </message>
        <message>
            <source>A try counts when: %1; %2 tries.</source>
            <translation>达成条件：%1；共%2次。</translation>
        </message>
        <message>
            <source>Cue ball in hand.</source>
            <translation>自由球。</translation>
        </message>
        <message>
            <source>Tries that met every goal</source>
            <translation>达成全部目标的次数</translation>
        </message>
        <message>
            <source>No run yet: how the tries come out over the weeks will stand here.</source>
            <translation>还没有记录：这里将显示几周来的结果。</translation>
        </message>
        <message>
            <source>Not enough yet: %1 of %2 tries.</source>
            <translation>还不够：%1/%2次。</translation>
        </message>
        <message>
            <source>Best run: %1, %2.</source>
            <translation>最佳一轮：%1，%2。</translation>
        </message>
        <message>
            <source>Count on while it is played</source>
            <translation>打球时持续计数</translation>
        </message>
        <message>
            <source>For a session that is live or being measured from a film</source>
            <translation>用于正在进行或正从视频测量的活动</translation>
        </message>
        <message>
            <source>Go on with the last run (%1 of %2)</source>
            <translation>继续上一轮（%1/%2）</translation>
        </message>
        <message>
            <source>All runs together: %1, between %2 and %3, of %4 tries.</source>
            <translation>各轮合计：%1，在%2到%3之间，共%4次。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillPicture</name>
        <message>
            <source>Set-up; in a run a click or the arrow keys put where the cue ball came to rest</source>
            <translation>摆位；进行中点击或用方向键标出母球停住的位置</translation>
        </message>
    </context>
    <context>
        <name>ferrule::DrillsPlace</name>
        <message>
            <source>Drills</source>
            <translation>练习</translation>
        </message>
        <message>
            <source>No shot of this session was played from the set-up of this drill.</source>
            <translation>本场次没有从该练习摆位打出的杆。</translation>
        </message>
        <message numerus="yes">
            <source>%n try(s) counted: %1</source>
            <translation>
                <numerusform>计入%n次：%1</numerusform>
            </translation>
        </message>
        <message>
            <source>Deleted; undo brings it back. Its runs stay.</source>
            <translation>已删除；撤销可恢复。各轮记录保留。</translation>
        </message>
        <message>
            <source>%1, my own</source>
            <translation>%1（自定）</translation>
        </message>
        <message>
            <source>Find a drill</source>
            <translation>查找练习</translation>
        </message>
        <message>
            <source>Kind of drill</source>
            <translation>练习种类</translation>
        </message>
        <message>
            <source>Import…</source>
            <translation>导入…</translation>
        </message>
        <message>
            <source>Take over the drills of a file</source>
            <translation>从文件导入练习</translation>
        </message>
        <message>
            <source>New drill</source>
            <translation>新建练习</translation>
        </message>
        <message>
            <source>My drill</source>
            <translation>我的练习</translation>
        </message>
        <message>
            <source>Set-up of the drill</source>
            <translation>练习的摆位</translation>
        </message>
        <message>
            <source>All drills</source>
            <translation>全部练习</translation>
        </message>
        <message>
            <source>Set-up %1</source>
            <translation>摆位%1</translation>
        </message>
        <message>
            <source>Import drills</source>
            <translation>导入练习</translation>
        </message>
        <message>
            <source>Drills (*.json);;All files (*)</source>
            <translation>练习 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Nothing of %1 was taken over: in "%2" %3</source>
            <translation>%1未导入：在“%2”中 %3</translation>
        </message>
        <message numerus="yes">
            <source>%n drill(s) taken over.</source>
            <translation>
                <numerusform>已导入%n个练习。</numerusform>
            </translation>
        </message>
        <message>
            <source>Export the drill</source>
            <translation>导出练习</translation>
        </message>
        <message>
            <source>Written to %1.</source>
            <translation>已写入%1。</translation>
        </message>
        <message>
            <source>Project this set-up</source>
            <translation>投影此摆位</translation>
        </message>
        <message>
            <source>Show on the cloth where the balls belong and where they are to rest</source>
            <translation>在台呢上显示球的摆放位置和应停住的位置</translation>
        </message>
    </context>
    <context>
        <name>ferrule::EditorPanel</name>
        <message>
            <source>Keep the drill</source>
            <translation>保存练习</translation>
        </message>
        <message>
            <source>Do not keep</source>
            <translation>不保存</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>名称(&amp;N)</translation>
        </message>
        <message>
            <source>What it is f&amp;or</source>
            <translation>用途(&amp;O)</translation>
        </message>
        <message>
            <source>Words with commas</source>
            <translation>用逗号分隔</translation>
        </message>
        <message>
            <source>&amp;Kinds</source>
            <translation>种类(&amp;K)</translation>
        </message>
        <message>
            <source>Pot</source>
            <translation>进球</translation>
        </message>
        <message>
            <source>Pot and leave</source>
            <translation>进球并走位</translation>
        </message>
        <message>
            <source>Leave alone</source>
            <translation>仅走位</translation>
        </message>
        <message>
            <source>Hit and hide</source>
            <translation>碰球并藏球</translation>
        </message>
        <message>
            <source>Clear the table</source>
            <translation>清台</translation>
        </message>
        <message>
            <source>As it is</source>
            <translation>保持不变</translation>
        </message>
        <message>
            <source>&amp;Asked</source>
            <translation>要求(&amp;A)</translation>
        </message>
        <message>
            <source>&amp;Tries</source>
            <translation>次数(&amp;T)</translation>
        </message>
        <message>
            <source>&amp;Zone's radius</source>
            <translation>区域半径(&amp;Z)</translation>
        </message>
        <message>
            <source>A jump shot: show the caution</source>
            <translation>跳球：显示警示</translation>
        </message>
        <message>
            <source>Means the same from the other end</source>
            <translation>从另一端打也一样</translation>
        </message>
        <message>
            <source>Ball</source>
            <translation>球</translation>
        </message>
        <message>
            <source>Put it on the table</source>
            <translation>放到台上</translation>
        </message>
        <message>
            <source>One set-up more</source>
            <translation>增加摆位</translation>
        </message>
        <message>
            <source>Remove this set-up</source>
            <translation>移除此摆位</translation>
        </message>
        <message>
            <source>Set-ups in turn, try by try</source>
            <translation>摆位轮流</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErasePanel</name>
        <message>
            <source>Erasing takes a player out of the record for good, with everything that is kept of the player. Export the player first if anything may be needed again.</source>
            <translation>清除会将球员及其保存的一切永久移出记录。如果以后可能用到，请先导出。</translation>
        </message>
        <message>
            <source>Show what would go…</source>
            <translation>显示将删除的内容…</translation>
        </message>
        <message>
            <source>What goes and what stays</source>
            <translation>删除与保留的内容</translation>
        </message>
        <message>
            <source>Take the name out of others' texts</source>
            <translation>从他人的文字中去掉此姓名</translation>
        </message>
        <message>
            <source>Delete the films of this player alone</source>
            <translation>删除只有此球员的视频</translation>
        </message>
        <message>
            <source>Delete the older copies</source>
            <translation>删除旧副本</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>取消</translation>
        </message>
        <message>
            <source>Erase for good</source>
            <translation>永久清除</translation>
        </message>
        <message>
            <source>Erase %1 for good</source>
            <translation>永久清除 %1</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ErrorMapView</name>
        <message>
            <source>How far a ball may be off, over the table</source>
            <translation>球的位置在台面各处可能差多少</translation>
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
            <translation>出杆</translation>
        </message>
        <message>
            <source>Every ball rests</source>
            <translation>球全部静止</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmPage</name>
        <message>
            <source>Progress</source>
            <translation>进度</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>在复盘中查看(&amp;L)</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>另一场次(&amp;A)</translation>
        </message>
        <message>
            <source>Film and rig belong together (sure to %1 %).</source>
            <translation>视频和机位相符（把握%1%）。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilmView</name>
        <message>
            <source>Film</source>
            <translation>视频</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FilterBar</name>
        <message>
            <source>Player</source>
            <translation>球员</translation>
        </message>
        <message>
            <source>Period</source>
            <translation>时段</translation>
        </message>
        <message>
            <source>All time</source>
            <translation>全部时间</translation>
        </message>
        <message>
            <source>Last 30 days</source>
            <translation>最近30天</translation>
        </message>
        <message>
            <source>Last 90 days</source>
            <translation>最近90天</translation>
        </message>
        <message>
            <source>This month</source>
            <translation>本月</translation>
        </message>
        <message>
            <source>Last month</source>
            <translation>上月</translation>
        </message>
        <message>
            <source>From day to day</source>
            <translation>指定起止日</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>起始日</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>截止日</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>球台</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>项目</translation>
        </message>
        <message>
            <source>Practice or match</source>
            <translation>训练或比赛</translation>
        </message>
        <message>
            <source>Practice and matches</source>
            <translation>训练和比赛</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>训练</translation>
        </message>
        <message>
            <source>Matches</source>
            <translation>比赛</translation>
        </message>
        <message>
            <source>Lessons</source>
            <translation>教学</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>所有球台</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>所有项目</translation>
        </message>
        <message>
            <source>Drill</source>
            <translation>练习</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>袋口</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>所有袋口</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>切角</translation>
        </message>
        <message>
            <source>Way of the cue ball</source>
            <translation>母球行程</translation>
        </message>
        <message>
            <source>With and without drills</source>
            <translation>含与不含练习</translation>
        </message>
        <message>
            <source>Cut %1 to %2</source>
            <comment>two angles</comment>
            <translation>切角%1到%2</translation>
        </message>
        <message>
            <source>Every cut</source>
            <translation>所有切角</translation>
        </message>
        <message>
            <source>Shorter than %1 widths</source>
            <translation>短于%1个台宽</translation>
        </message>
        <message>
            <source>%1 to %2 widths</source>
            <translation>%1到%2个台宽</translation>
        </message>
        <message>
            <source>Longer than %1 widths</source>
            <translation>长于%1个台宽</translation>
        </message>
        <message>
            <source>Every distance</source>
            <translation>所有距离</translation>
        </message>
        <message>
            <source>Opponent</source>
            <translation>对手</translation>
        </message>
        <message>
            <source>Every opponent</source>
            <translation>所有对手</translation>
        </message>
    </context>
    <context>
        <name>ferrule::FirstPicture</name>
        <message>
            <source>The film's first picture</source>
            <translation>视频的第一帧</translation>
        </message>
        <message>
            <source>No film yet</source>
            <translation>还没有视频</translation>
        </message>
        <message>
            <source>A film or still of the table</source>
            <translation>球台的视频或照片</translation>
        </message>
        <message>
            <source>Films and stills (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;All files (*)</source>
            <translation>视频和照片 (*.mp4 *.mkv *.mov *.avi *.webm *.png *.jpg *.jpeg);;所有文件 (*)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::GuestBar</name>
        <message>
            <source>Who the guest was</source>
            <translation>访客是谁</translation>
        </message>
        <message>
            <source>A player's name, known or new</source>
            <translation>球员姓名，已有或新的</translation>
        </message>
        <message>
            <source>That is who</source>
            <translation>就是此人</translation>
        </message>
        <message>
            <source>Stays a guest</source>
            <translation>仍为访客</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>撤回</translation>
        </message>
        <message>
            <source>What %1 played is now %2's.</source>
            <comment>a guest, a player</comment>
            <translation>%1打的球现归%2。</translation>
        </message>
        <message>
            <source>%1 and the guest played together, so they are two.</source>
            <translation>%1与访客一起打过球，是两个人。</translation>
        </message>
        <message>
            <source>A session that is not ended knows the guest: end it first.</source>
            <translation>有未结束的活动用到该访客：请先结束它。</translation>
        </message>
        <message>
            <source>Who was %1?</source>
            <comment>a guest</comment>
            <translation>%1是谁？</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeepPage</name>
        <message>
            <source>This set-up</source>
            <translation>本设置</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>使用中</translation>
        </message>
        <message>
            <source>&amp;Save into a folder…</source>
            <translation>保存到文件夹(&amp;S)…</translation>
        </message>
        <message>
            <source>&amp;Check again with a film…</source>
            <translation>用视频重新检查(&amp;C)…</translation>
        </message>
        <message>
            <source>Start a &amp;new set-up</source>
            <translation>新建设置(&amp;N)</translation>
        </message>
        <message>
            <source>table.json, lens.json and rig.json are written. Check again after another day, another film, or a ladder against the camera: it takes less than a minute.</source>
            <translation>将写入table.json、lens.json和rig.json。隔了一天、换了视频，或梯子碰过相机之后，请重新检查：不到一分钟即可完成。</translation>
        </message>
        <message>
            <source>Look at every fixing again twice a year. A loose bracket, a hot smell or a rig that wanders means: power off, and nobody plays under it. A projector hangs by the same rules as a camera; never look into its beam, and switch it to black when somebody bends over the table. Local codes come first.</source>
            <translation>每年两次逐一查看所有固定件。支架松动、有焦糊味或机位漂移，就要切断电源，任何人不得在下面打球。投影仪的悬挂规则与相机相同；绝不可直视光束，有人俯身到台面上时要切换为黑屏。当地规范优先。</translation>
        </message>
        <message>
            <source>Save the set-up into a folder</source>
            <translation>将设置保存到文件夹</translation>
        </message>
        <message>
            <source>Start a new set-up</source>
            <translation>新建设置</translation>
        </message>
        <message>
            <source>What was put in for this one is forgotten; files that were saved into a folder stay. Start a new set-up?</source>
            <translation>本设置中填写的内容将被丢弃；已保存到文件夹的文件会保留。要新建设置吗？</translation>
        </message>
        <message>
            <source>not saved yet</source>
            <translation>尚未保存</translation>
        </message>
        <message>
            <source>no rig yet</source>
            <translation>还没有机位</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>还没有</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>table, its rig file</comment>
            <translation>%1：%2</translation>
        </message>
    </context>
    <context>
        <name>ferrule::KeyPage</name>
        <message>
            <source>Keys</source>
            <translation>快捷键</translation>
        </message>
        <message>
            <source>Wheel: enlarge. Drag: move, or scrub on the time line. Double click: whole table.</source>
            <translation>滚轮：缩放。拖动：移动画面，在时间线上则为快进快退。双击：整张球台。</translation>
        </message>
        <message>
            <source>Menu</source>
            <translation>菜单</translation>
        </message>
        <message>
            <source>Action</source>
            <translation>操作</translation>
        </message>
        <message>
            <source>What it does</source>
            <translation>作用</translation>
        </message>
        <message>
            <source>Find an action</source>
            <translation>查找操作</translation>
        </message>
        <message>
            <source>Find: a word, or a key such as Ctrl</source>
            <translation>查找：输入文字或按键，如 Ctrl</translation>
        </message>
    </context>
    <context>
        <name>ferrule::Legend</name>
        <message>
            <source>Solid: the way as it was measured, filled: where the taken shot would leave the cue ball. Dashed: the suggested shot, hatched: its leave. Dotted: predicted while the ball was hidden. Dot: a contact.</source>
            <translation>实线：测得的球路；实心：按实打预计的母球停位。虚线：建议的打法；斜线：其母球停位。点线：球被遮住时的推算。圆点：碰撞。</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>the shot as it was played</comment>
            <translation>实打</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>the shot that was ranked first</comment>
            <translation>建议</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LensPage</name>
        <message>
            <source>&amp;No board: take the lens from the straightness of the cushions</source>
            <translation>没有标定板：由库边的平直求出镜头(&amp;N)</translation>
        </message>
        <message>
            <source>Parameter</source>
            <translation>参数</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>数值</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>不确定度</translation>
        </message>
        <message>
            <source>The lens's parameters</source>
            <translation>镜头参数</translation>
        </message>
        <message>
            <source>ChArUco: squares with markers</source>
            <translation>ChArUco：带码方格</translation>
        </message>
        <message>
            <source>Plain chessboard</source>
            <translation>普通棋盘格</translation>
        </message>
        <message>
            <source>&amp;Board</source>
            <translation>标定板(&amp;B)</translation>
        </message>
        <message>
            <source>Columns of the board</source>
            <translation>标定板列数</translation>
        </message>
        <message>
            <source>Rows of the board</source>
            <translation>标定板行数</translation>
        </message>
        <message>
            <source>Side of a square</source>
            <translation>方格边长</translation>
        </message>
        <message>
            <source>Side of a marker</source>
            <translation>码的边长</translation>
        </message>
        <message>
            <source>Set of markers</source>
            <translation>码字典</translation>
        </message>
        <message>
            <source>Counts</source>
            <translation>格数</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>纸张</translation>
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
            <translation>制作打印页（PDF）(&amp;S)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>打印</translation>
        </message>
        <message>
            <source>The line across, as it measures on the paper</source>
            <translation>横线在纸上的实测长度</translation>
        </message>
        <message>
            <source>The line down, as it measures on the paper</source>
            <translation>竖线在纸上的实测长度</translation>
        </message>
        <message>
            <source>across,</source>
            <translation>横线，</translation>
        </message>
        <message>
            <source>down; 100 mm when the printer is true</source>
            <translation>竖线；打印准确时为100 mm</translation>
        </message>
        <message>
            <source>Lines on it</source>
            <translation>校验线</translation>
        </message>
        <message>
            <source>Glue the print to something flat. Take 15 to 30 sharp stills that together fill the picture to its corners, the board tilted in many of them. Drop files or a folder here.</source>
            <translation>把打印件粘在平整的板上。拍15至30张清晰的照片，合起来要铺满画面直到四角，其中多张要把标定板倾斜。可把文件或文件夹拖到这里。</translation>
        </message>
        <message>
            <source>&amp;Add stills…</source>
            <translation>添加照片(&amp;A)…</translation>
        </message>
        <message>
            <source>Add a fol&amp;der…</source>
            <translation>添加文件夹(&amp;D)…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>移除(&amp;R)</translation>
        </message>
        <message>
            <source>&amp;Calibrate</source>
            <translation>标定(&amp;C)</translation>
        </message>
        <message>
            <source>&amp;Use a lens file…</source>
            <translation>使用镜头文件(&amp;U)…</translation>
        </message>
        <message>
            <source>Still</source>
            <translation>照片</translation>
        </message>
        <message>
            <source>Board</source>
            <translation>标定板</translation>
        </message>
        <message>
            <source>Edges</source>
            <translation>边缘宽度</translation>
        </message>
        <message>
            <source>rms</source>
            <translation>均方根</translation>
        </message>
        <message>
            <source>Stills of the board</source>
            <translation>标定板的照片</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;All files (*)</source>
            <translation>图片 (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;所有文件 (*)</translation>
        </message>
        <message>
            <source>A folder of stills</source>
            <translation>照片文件夹</translation>
        </message>
        <message>
            <source>Use a lens file</source>
            <translation>使用镜头文件</translation>
        </message>
        <message>
            <source>Lens files (*.json);;All files (*)</source>
            <translation>镜头文件 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>制作打印页</translation>
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
            <translation>标定板已写入%1；请按100%打印并量出上面的线。</translation>
        </message>
        <message>
            <source>squares of</source>
            <translation>格，格边长</translation>
        </message>
        <message>
            <source>inner corners, squares of</source>
            <translation>个内角点，格边长</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>found, but does not fit the others</source>
            <translation>已找到，但与其他照片不符</translation>
        </message>
        <message>
            <source>How wide the squares' edges are; less than 1 px is sharp</source>
            <translation>方格边缘的宽度；小于1 px为清晰</translation>
        </message>
        <message>
            <source>Where the board was in the picture; hatched: nowhere yet.</source>
            <translation>标定板在画面中出现过的位置；斜线：还没有出现过。</translation>
        </message>
        <message numerus="yes">
            <source>%n still(s) used; the board was in %1 % of the picture, out to %2 % of the way to its corners.</source>
            <translation>
                <numerusform>使用了%n张照片；标定板出现在画面的%1%，最远达到画面中心至四角的%2%。</numerusform>
            </translation>
        </message>
        <message>
            <source>The lens will come from the cushions with the rig; a board would make places several millimetres better.</source>
            <translation>镜头将与机位一起由库边求出；使用标定板可使位置准确度提高几毫米。</translation>
        </message>
        <message>
            <source>Lens of %1 at %2 × %3 px, %4, rms %5 px.</source>
            <translation>%1的镜头，%2 × %3 px，%4，均方根%5 px。</translation>
        </message>
        <message>
            <source>No lens yet.</source>
            <translation>还没有镜头。</translation>
        </message>
        <message>
            <source>without a board</source>
            <translation>不用标定板</translation>
        </message>
        <message>
            <source>the lines on the print</source>
            <translation>打印纸上的线</translation>
        </message>
        <message>
            <source>the board</source>
            <translation>标定板</translation>
        </message>
        <message>
            <source>Markers</source>
            <translation>标记</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesList</name>
        <message>
            <source>Noses, sights and pockets, and how far each is off</source>
            <translation>库边前沿、标记点和袋口，以及各自的偏差</translation>
        </message>
        <message>
            <source>Nose, sight or pocket</source>
            <translation>前沿、标记点或袋口</translation>
        </message>
        <message>
            <source>Known from</source>
            <translation>来源</translation>
        </message>
        <message>
            <source>Off by</source>
            <translation>偏差</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>by hand</source>
            <translation>手动</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>未找到</translation>
        </message>
        <message>
            <source>the picture</source>
            <translation>画面</translation>
        </message>
        <message>
            <source>not there</source>
            <translation>不存在</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesPanel</name>
        <message>
            <source>Look at the &amp;lines, adjust them by hand…</source>
            <translation>查看线条并手动调整(&amp;L)…</translation>
        </message>
        <message>
            <source>&amp;As they were found</source>
            <translation>恢复为找到的线条(&amp;A)</translation>
        </message>
        <message>
            <source>The sight or pocket counts where it shows (insert)</source>
            <translation>该标记点或袋口按显示位置计入（插入键）</translation>
        </message>
        <message>
            <source>The sight or pocket no longer counts (delete)</source>
            <translation>该标记点或袋口不再计入（删除键）</translation>
        </message>
        <message>
            <source>the lines as found</source>
            <translation>恢复找到的线条</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a cushion</comment>
            <translation>手动放置：%1</translation>
        </message>
        <message>
            <source>%1 placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>手动放置：%1</translation>
        </message>
        <message>
            <source>%1 is not there</source>
            <comment>a sight or pocket</comment>
            <translation>不存在：%1</translation>
        </message>
        <message>
            <source>&amp;Look for them again</source>
            <translation>重新查找(&amp;L)</translation>
        </message>
        <message>
            <source>The rig is made from the noses of the cushions, the sights and the pockets, as the picture shows them; where one is missed or mistaken, place it by hand.</source>
            <translation>机位由画面中显示的库边前沿、标记点和袋口求出；若有遗漏或误认，请手动放置。</translation>
        </message>
        <message numerus="yes">
            <source>%n place(s) are set by hand.</source>
            <translation>
                <numerusform>有%n处为手动放置。</numerusform>
            </translation>
        </message>
        <message>
            <source>Drag a nose's handles to where its cloth ends above the bed, spread from end to end and a hand's breadth from the pockets; drag a sight's diamond onto its middle, a pocket's ring onto the middle of its opening. Arrow keys move what is chosen, page up and page down go from one to the next.</source>
            <translation>把前沿的控制点拖到库边台呢在台面上方结束之处，从一端到另一端分布，离袋口一掌宽；把标记点的菱形拖到其中心，把袋口的圆环拖到开口的中心。方向键移动所选项，翻页键在各项之间切换。</translation>
        </message>
        <message numerus="yes">
            <source>%n cushion(s) were not found (dashed): place them.</source>
            <translation>
                <numerusform>有%n条库边没有找到（虚线）：请手动放置。</numerusform>
            </translation>
        </message>
        <message>
            <source>Working out how well they agree…</source>
            <translation>正在计算吻合程度…</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>The noses agree to %1 (rms).</source>
            <translation>库边前沿吻合到%1（均方根）。</translation>
        </message>
        <message numerus="yes">
            <source>%n sight(s) agree to %1 (rms) along their rails; furthest off, by %2, lies %3.</source>
            <translation>
                <numerusform>%n个标记点沿木边吻合到%1（均方根）；偏差最大的相差%2：%3。</numerusform>
            </translation>
        </message>
        <message>
            <source>No sight was found; with them, places would be surer.</source>
            <translation>未找到标记点；有了它们，位置会更可靠。</translation>
        </message>
        <message>
            <source>&amp;Count it here</source>
            <translation>在这里计入(&amp;C)</translation>
        </message>
        <message>
            <source>It is &amp;not there</source>
            <translation>不存在(&amp;N)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LinesView</name>
        <message>
            <source>%1, place %2 of %3</source>
            <comment>a cushion</comment>
            <translation>%1，第%2点，共%3点</translation>
        </message>
        <message>
            <source>The cushions' noses, the sights and the pockets in the film's picture</source>
            <translation>视频画面中的库边前沿、标记点和袋口</translation>
        </message>
        <message>
            <source>found</source>
            <comment>a sight or pocket</comment>
            <translation>已找到</translation>
        </message>
        <message>
            <source>placed by hand</source>
            <comment>a sight or pocket</comment>
            <translation>手动放置</translation>
        </message>
        <message>
            <source>not there</source>
            <comment>a sight or pocket</comment>
            <translation>不存在</translation>
        </message>
        <message>
            <source>not found</source>
            <comment>a sight or pocket</comment>
            <translation>未找到</translation>
        </message>
    </context>
    <context>
        <name>ferrule::LivePage</name>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>在复盘中查看(&amp;L)</translation>
        </message>
        <message>
            <source>&amp;Another session</source>
            <translation>另一场次(&amp;A)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MainWindow</name>
        <message>
            <source>&amp;Wide list of places</source>
            <translation>宽导航栏(&amp;W)</translation>
        </message>
        <message>
            <source>&amp;Narrow list of places</source>
            <translation>窄导航栏(&amp;N)</translation>
        </message>
        <message>
            <source>Se&amp;ttings</source>
            <translation>首选项(&amp;T)</translation>
        </message>
        <message>
            <source>Open a record</source>
            <translation>打开记录</translation>
        </message>
        <message>
            <source>Records (*.sqlite);;All files (*)</source>
            <translation>记录 (*.sqlite);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Open &amp;again</source>
            <translation>重新打开(&amp;A)</translation>
        </message>
        <message>
            <source>No record was opened yet</source>
            <translation>还没有打开过记录</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>语言</translation>
        </message>
        <message>
            <source>Something is being measured. Choose the language when it is done.</source>
            <translation>正在测量。请在完成后再选择语言。</translation>
        </message>
        <message>
            <source>Take in another record</source>
            <translation>并入另一份记录</translation>
        </message>
        <message>
            <source>Something is being measured. Take the record in when it is done.</source>
            <translation>正在测量。请在完成后再并入记录。</translation>
        </message>
        <message>
            <source>Taking in %1…</source>
            <translation>正在并入%1…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MapPage</name>
        <message>
            <source>Comes from</source>
            <translation>来源</translation>
        </message>
        <message>
            <source>Standard uncertainty</source>
            <translation>标准不确定度</translation>
        </message>
        <message>
            <source>Where the uncertainty comes from, at the marked place</source>
            <translation>所标位置的不确定度来源</translation>
        </message>
        <message>
            <source>What it is worth in a shot</source>
            <translation>对一杆球的影响</translation>
        </message>
        <message>
            <source>&amp;Pocket</source>
            <translation>袋口(&amp;P)</translation>
        </message>
        <message>
            <source>The object ball, toward the foot</source>
            <translation>目标球，向置球端</translation>
        </message>
        <message>
            <source>The object ball, to the left</source>
            <translation>目标球，向左</translation>
        </message>
        <message>
            <source>Object ball &amp;x</source>
            <translation>目标球x(&amp;X)</translation>
        </message>
        <message>
            <source>Object ball &amp;y</source>
            <translation>目标球y(&amp;Y)</translation>
        </message>
        <message>
            <source>Cut angle; less than 0: to the right</source>
            <translation>切角；负数：右切</translation>
        </message>
        <message>
            <source>&amp;Cut</source>
            <translation>切角(&amp;C)</translation>
        </message>
        <message>
            <source>How far the cue ball rolls before it meets the object ball</source>
            <translation>母球碰到目标球之前走多远</translation>
        </message>
        <message>
            <source>Cue ball a&amp;way</source>
            <translation>母球距离(&amp;W)</translation>
        </message>
        <message>
            <source>Places that are off by so much</source>
            <translation>位置误差的假定值</translation>
        </message>
        <message>
            <source>If places were &amp;off by</source>
            <translation>假如位置误差为(&amp;O)</translation>
        </message>
        <message>
            <source>The camera does not see this place.</source>
            <translation>相机看不到这个位置。</translation>
        </message>
        <message>
            <source>There is no rig yet.</source>
            <translation>还没有机位。</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>At x %1, y %2: within %3 (95 %)</source>
            <translation>在x %1、y %2处：不超过%3（95%）</translation>
        </message>
        <message>
            <source>All together</source>
            <translation>合计</translation>
        </message>
        <message>
            <source>One of the balls would lie off the table; choose another place, cut or distance.</source>
            <translation>有一颗球会在台外；请换一个位置、切角或距离。</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <comment>component, its share</comment>
            <translation>%1 %2%</translation>
        </message>
        <message>
            <source>It comes from: %1. %2</source>
            <translation>来源：%1。%2</translation>
        </message>
        <message>
            <source>With places so far off the cue ball may miss the object ball altogether.</source>
            <translation>位置误差这么大，母球可能完全碰不到目标球。</translation>
        </message>
        <message>
            <source>A ball lies within so many millimetres of its place (95 %)</source>
            <translation>球的位置误差上限，毫米（95%）</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasurePicture</name>
        <message>
            <source>Where to measure the table: from nose to nose, and both diagonals</source>
            <translation>球台怎样量：从前沿到前沿，以及两条对角线</translation>
        </message>
        <message>
            <source>Where to measure the tags: their corners from the table's middle</source>
            <translation>标记怎样量：从台面中心量到各角</translation>
        </message>
        <message>
            <source>length</source>
            <translation>长</translation>
        </message>
        <message>
            <source>width</source>
            <translation>宽</translation>
        </message>
        <message>
            <source>diagonal A</source>
            <translation>对角线A</translation>
        </message>
        <message>
            <source>diagonal B</source>
            <translation>对角线B</translation>
        </message>
        <message>
            <source>head</source>
            <translation>开球端</translation>
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
            <translation>台面中心</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuredShotList</name>
        <message>
            <source>Shots measured so far</source>
            <translation>已测得的杆</translation>
        </message>
    </context>
    <context>
        <name>ferrule::MeasuringPictures</name>
        <message>
            <source>Picture of the film with the balls that were found</source>
            <translation>视频画面及找到的球</translation>
        </message>
    </context>
    <context>
        <name>ferrule::NoteSection</name>
        <message>
            <source>Notes about this player</source>
            <translation>关于此球员的备注</translation>
        </message>
        <message>
            <source>A new note</source>
            <translation>新备注</translation>
        </message>
        <message>
            <source>Who writes</source>
            <translation>谁在记录</translation>
        </message>
        <message>
            <source>Your name</source>
            <translation>您的姓名</translation>
        </message>
        <message>
            <source>Stands beside notes and consents that you write down</source>
            <translation>显示在您记下的备注和同意旁</translation>
        </message>
        <message>
            <source>&amp;Written by</source>
            <translation>记录人(&amp;W)</translation>
        </message>
        <message>
            <source>Add the note</source>
            <translation>添加备注</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>移除</translation>
        </message>
        <message>
            <source>Remove the chosen note</source>
            <translation>移除所选备注</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PeopleDesk</name>
        <message>
            <source>add %1</source>
            <translation>添加 %1</translation>
        </message>
        <message>
            <source>%1 has played meanwhile and stays.</source>
            <translation>%1 期间已打过球，予以保留。</translation>
        </message>
        <message>
            <source>change %1</source>
            <translation>更改 %1</translation>
        </message>
        <message>
            <source>rename %1 to %2</source>
            <translation>将 %1 改名为 %2</translation>
        </message>
        <message>
            <source>note consent of %1</source>
            <translation>记下 %1 的同意</translation>
        </message>
        <message>
            <source>withdraw consent of %1</source>
            <translation>撤回 %1 的同意</translation>
        </message>
        <message>
            <source>note about %1</source>
            <translation>关于 %1 的备注</translation>
        </message>
        <message>
            <source>remove a note about %1</source>
            <translation>移除关于 %1 的备注</translation>
        </message>
        <message>
            <source>make %1 and %2 one</source>
            <translation>将 %1 与 %2 合为一人</translation>
        </message>
        <message>
            <source>%1 and %2 played in one session, "%3", so they are two people.</source>
            <translation>%1 和 %2 在同一次场次“%3”中打过球，因此是两个人。</translation>
        </message>
        <message>
            <source>%1 plays in the session that is under way; end it first.</source>
            <translation>%1 正在进行中的场次里打球；请先结束它。</translation>
        </message>
        <message>
            <source>%1 plays in a session that is under way; go on with it in Session and end it first.</source>
            <translation>%1 正在进行中的场次里打球；请在“场次”中继续并先结束它。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PersonForm</name>
        <message>
            <source>Name</source>
            <translation>姓名</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>姓名(&amp;N)</translation>
        </message>
        <message>
            <source>Playing hand</source>
            <translation>惯用手</translation>
        </message>
        <message>
            <source>Playing &amp;hand</source>
            <translation>惯用手(&amp;H)</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>分组</translation>
        </message>
        <message>
            <source>Such as juniors, Tuesday</source>
            <translation>例如：少年组, 周二</translation>
        </message>
        <message>
            <source>With commas between; a person may be in several</source>
            <translation>用逗号分隔；一人可属于多个分组</translation>
        </message>
        <message>
            <source>G&amp;roups</source>
            <translation>分组(&amp;R)</translation>
        </message>
        <message>
            <source>&amp;Minor: a parent or guardian gives consent</source>
            <translation>未成年：由父母或监护人同意(&amp;M)</translation>
        </message>
        <message>
            <source>Minor</source>
            <translation>未成年</translation>
        </message>
        <message>
            <source>G&amp;uest: who it is will be known later</source>
            <translation>访客：以后才知道是谁(&amp;U)</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>访客</translation>
        </message>
        <message>
            <source>Who it is</source>
            <translation>是谁</translation>
        </message>
        <message>
            <source>Give over</source>
            <translation>归给</translation>
        </message>
        <message>
            <source>Give all shots to that player</source>
            <translation>把所有击球归给该球员</translation>
        </message>
        <message>
            <source>All shots, sessions, notes and consents go to that player; can be undone</source>
            <translation>所有击球、场次、备注和同意都归给该球员；可以撤销</translation>
        </message>
        <message>
            <source>This &amp;is</source>
            <translation>这是(&amp;I)</translation>
        </message>
        <message>
            <source>Same person &amp;as</source>
            <translation>同一人(&amp;A)</translation>
        </message>
        <message>
            <source>Choose a player</source>
            <translation>选择球员</translation>
        </message>
        <message>
            <source>A player needs a name; the old one stays.</source>
            <translation>球员需要姓名；保留原名。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlaceList</name>
        <message>
            <source>Places</source>
            <translation>页面</translation>
        </message>
        <message>
            <source>Show words</source>
            <translation>显示文字</translation>
        </message>
        <message>
            <source>Show icons only</source>
            <translation>只显示图标</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlanView</name>
        <message>
            <source>Plan of the table</source>
            <translation>球台俯视图</translation>
        </message>
    </context>
    <context>
        <name>ferrule::PlayersPlace</name>
        <message>
            <source>Players</source>
            <translation>球员</translation>
        </message>
        <message>
            <source>Search for a player or group</source>
            <translation>搜索球员或分组</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>分组</translation>
        </message>
        <message>
            <source>Players of the record</source>
            <translation>记录中的球员</translation>
        </message>
        <message>
            <source>Nobody passes the search and the group.</source>
            <translation>没有人符合搜索和分组。</translation>
        </message>
        <message>
            <source>Person</source>
            <translation>个人</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>同意</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>备注</translation>
        </message>
        <message>
            <source>Choose a player on the left.</source>
            <translation>请在左侧选择一名球员。</translation>
        </message>
        <message>
            <source>Add a player</source>
            <translation>添加球员</translation>
        </message>
        <message>
            <source>Guest</source>
            <translation>访客</translation>
        </message>
        <message>
            <source>New player</source>
            <translation>新球员</translation>
        </message>
        <message>
            <source>Nobody is in %1 yet. Add a player first: name, groups and consent; then sessions and films know them by name.</source>
            <translation>%1 中还没有人。请先添加一名球员：姓名、分组和同意；之后场次和视频就能按姓名识别。</translation>
        </message>
        <message>
            <source>Every group</source>
            <translation>所有分组</translation>
        </message>
        <message>
            <source>Export and erase</source>
            <translation>导出与清除</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>已写入：%1</translation>
        </message>
        <message>
            <source>Choose the player who is to be exported.</source>
            <translation>请选择要导出的球员。</translation>
        </message>
        <message>
            <source>Export the player to a folder</source>
            <translation>将球员导出到文件夹</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProgressPlace</name>
        <message>
            <source>Progress</source>
            <translation>进步</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>图表</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>%1中还没有人打过球。请打一场并填写姓名，或打开另一份记录。</translation>
        </message>
        <message>
            <source>Co&amp;mpare with</source>
            <translation>对比(&amp;M)</translation>
        </message>
        <message>
            <source>Show two players or two periods side by side</source>
            <translation>并排显示两位球员或两个时段</translation>
        </message>
        <message>
            <source>What to work on</source>
            <translation>要练什么</translation>
        </message>
        <message>
            <source>What the figures rest on</source>
            <translation>图表的依据</translation>
        </message>
        <message>
            <source>What to work on and what the figures rest on</source>
            <translation>要练什么以及图表的依据</translation>
        </message>
        <message>
            <source>What is pointed at</source>
            <translation>所指部分</translation>
        </message>
        <message>
            <source>Progress needs shots: play a session, or open a record.</source>
            <translation>要看进步，先要有击球：请打一场，或打开记录。</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>打开记录…</translation>
        </message>
        <message>
            <source>There is no shot of this player in this selection. Choose a longer period.</source>
            <translation>所选范围内没有该球员的击球。请选择更长的时段。</translation>
        </message>
        <message>
            <source>Choose a chart first: click it, or go to it with the Tab key.</source>
            <translation>请先选择图表：单击它，或用Tab键移到它。</translation>
        </message>
        <message>
            <source>Export the chart</source>
            <translation>导出图表</translation>
        </message>
        <message>
            <source>chart.svg</source>
            <translation>chart.svg</translation>
        </message>
        <message>
            <source>Pictures (*.svg *.png);;Numbers (*.csv)</source>
            <translation>图片 (*.svg *.png);;数字 (*.csv)</translation>
        </message>
        <message>
            <source>The chart is in %1.</source>
            <translation>图表已写入%1。</translation>
        </message>
        <message>
            <source>Reading the record…</source>
            <translation>正在读取记录…</translation>
        </message>
        <message>
            <source>Working it out…</source>
            <translation>正在计算…</translation>
        </message>
        <message>
            <source>Point at a part of a chart for its numbers; click it for the shots behind it.</source>
            <translation>指向图表的某一部分可看其数字；单击可看对应击球。</translation>
        </message>
        <message>
            <source>Choose a part of a chart first: click it, or go to it with the arrow keys.</source>
            <translation>请先选择图表的某一部分：单击它，或用方向键移到它。</translation>
        </message>
        <message>
            <source>There is no shot behind this.</source>
            <translation>这里没有对应击球。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorDesk</name>
        <message>
            <source>The set-up in use has no projector; find where its light falls in Set-up, step Projector, and save the set-up.</source>
            <translation>正在使用的设置没有投影仪；请在“设置”的“投影仪”步骤中找到光落在哪里，并保存设置。</translation>
        </message>
        <message>
            <source>No screen beside the window's own has the %1 × %2 px that the projector was found with; connect it, or choose its screen in Set-up, step Projector, and find it anew.</source>
            <translation>除窗口所在屏幕外，没有屏幕是找到投影仪时的%1 × %2像素；请连接投影仪，或在“设置”的“投影仪”步骤中选择其屏幕并重新查找。</translation>
        </message>
        <message>
            <source>Never look into the beam; B makes it black, Escape closes it.</source>
            <translation>绝不可直视光束；按B变黑，按Esc关闭。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorPage</name>
        <message>
            <source>Never look into the beam, and let nobody bend into it: black is one key away (B). The pictures change in slow fades and nothing blinks; if light that moves troubles somebody, leave it black. A projector over a table needs fixings rated for its weight, a steel tether to a second point, and mains work by a licensed electrician; local codes come first.</source>
            <translation>绝不可直视光束，也不要让任何人俯身进入光束：按一个键（B）即可黑屏。画面缓慢过渡，没有任何闪烁；如果有人对移动的光感到不适，请保持黑屏。球台上方的投影仪要用承重合格的配件固定，用钢丝绳系到第二个固定点，电源线路须由持证电工施工；当地规范优先。</translation>
        </message>
        <message>
            <source>&amp;Screen of the projector</source>
            <translation>投影仪所在屏幕(&amp;S)</translation>
        </message>
        <message>
            <source>&amp;Black</source>
            <translation>黑屏(&amp;B)</translation>
        </message>
        <message>
            <source>&amp;Grid of tags</source>
            <translation>标记网格(&amp;G)</translation>
        </message>
        <message>
            <source>&amp;Lines and spots of the table</source>
            <translation>球台的线和点(&amp;L)</translation>
        </message>
        <message>
            <source>Clear the table, darken the room, show the grid and take a still of it with the camera of this rig, in its own picture size.</source>
            <translation>清空台面，调暗房间，显示网格，用本机位的相机按其画面尺寸拍一张照片。</translation>
        </message>
        <message>
            <source>&amp;Find the projector in a still…</source>
            <translation>在照片中找投影仪(&amp;F)…</translation>
        </message>
        <message>
            <source>A still of the grid on the cloth</source>
            <translation>台呢上网格的照片</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg);;All files (*)</source>
            <translation>图片 (*.png *.jpg *.jpeg);;所有文件 (*)</translation>
        </message>
        <message>
            <source>%1: %2 × %3 px</source>
            <comment>a screen</comment>
            <translation>%1：%2 × %3 px</translation>
        </message>
        <message>
            <source>It is not known yet where the projector's light falls; show the grid and find it in a still.</source>
            <translation>还不知道投影仪的光落在哪里；请显示网格，并在照片中找到它。</translation>
        </message>
        <message>
            <source>The projector was found with a picture of %1 × %2 px and this screen has %3 × %4 px; choose its screen, or show the grid again and find it anew.</source>
            <translation>投影仪是以%1 × %2 px的画面找到的，而此屏幕为%3 × %4 px；请选择投影仪的屏幕，或重新显示网格再找一次。</translation>
        </message>
        <message>
            <source>No projector yet; without one this step is not needed.</source>
            <translation>还没有投影仪；不用投影仪就不需要这一步。</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>Light lies true to %1 (rms) on the cloth, by tags that had no part in it (%2 tags, %3 × %4 px, %5).</source>
            <translation>用未参与计算的标记检验，光在台呢上的误差为%1（均方根）（%2个标记，%3 × %4 px，%5）。</translation>
        </message>
        <message>
            <source>&amp;Close its screen</source>
            <translation>关闭投影画面(&amp;C)</translation>
        </message>
        <message>
            <source>A &amp;position file…</source>
            <translation>局面文件(&amp;P)…</translation>
        </message>
        <message>
            <source>A position file</source>
            <translation>局面文件</translation>
        </message>
        <message>
            <source>Positions (*.json);;All files (*)</source>
            <translation>局面 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>grid of tags</source>
            <translation>标记网格</translation>
        </message>
        <message>
            <source>lines and spots</source>
            <translation>线和点</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ProjectorScreen</name>
        <message>
            <source>Projector</source>
            <translation>投影仪</translation>
        </message>
        <message>
            <source>The projector's picture; Escape closes it, B makes it black</source>
            <translation>投影仪画面；Esc键关闭，B键黑屏</translation>
        </message>
    </context>
    <context>
        <name>ferrule::QuestionPanel</name>
        <message>
            <source>What does %1 choose?</source>
            <comment>a player</comment>
            <translation>%1选择什么？</translation>
        </message>
        <message>
            <source>Shot %1: %2</source>
            <comment>number, a question</comment>
            <translation>第%1杆：%2</translation>
        </message>
        <message numerus="yes">
            <source>%n more shot(s) wait for an answer.</source>
            <translation>
                <numerusform>还有%n杆等待回答。</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::RemarksSection</name>
        <message>
            <source>Add a tag</source>
            <translation>添加标签</translation>
        </message>
        <message>
            <source>Notes on the shot; Delete takes one away</source>
            <translation>此杆的备注；按Delete删除</translation>
        </message>
        <message>
            <source>Take the note away</source>
            <translation>删除备注</translation>
        </message>
        <message>
            <source>Write a note</source>
            <translation>写备注</translation>
        </message>
        <message>
            <source>Who writes and corrects</source>
            <translation>由谁书写和更正</translation>
        </message>
        <message>
            <source>Take the tag away: %1</source>
            <translation>去掉标签：%1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>who, when</comment>
            <translation>%1，%2</translation>
        </message>
        <message>
            <source>By</source>
            <translation>作者</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReportsPlace</name>
        <message>
            <source>Reports</source>
            <translation>报告</translation>
        </message>
        <message>
            <source>Nobody has played in %1 yet. Play a session with names, or open another record.</source>
            <translation>%1中还没有人打过球。请打一场并填写姓名，或打开另一份记录。</translation>
        </message>
        <message>
            <source>The student's language</source>
            <translation>学员的语言</translation>
        </message>
        <message>
            <source>The student's &amp;language</source>
            <translation>学员的语言(&amp;L)</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>纸张</translation>
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
            <translation>纸张(&amp;P)</translation>
        </message>
        <message>
            <source>Coach's note</source>
            <translation>教练评语</translation>
        </message>
        <message>
            <source>Empty: lines to write on</source>
            <translation>留空：印出横线供书写</translation>
        </message>
        <message>
            <source>Coach's &amp;note</source>
            <translation>教练评语(&amp;N)</translation>
        </message>
        <message>
            <source>As PDF or HTML to hand out, or its numbers as CSV.</source>
            <translation>PDF或HTML可交给学员，数字可存为CSV。</translation>
        </message>
        <message>
            <source>A report needs shots: play a session, or open a record.</source>
            <translation>要出报告，先要有击球：请打一场，或打开记录。</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>打开记录…</translation>
        </message>
        <message>
            <source>There is no report yet.</source>
            <translation>还没有报告。</translation>
        </message>
        <message>
            <source>report-%1.pdf</source>
            <translation>report-%1.pdf</translation>
        </message>
        <message>
            <source>Export the report</source>
            <translation>导出报告</translation>
        </message>
        <message>
            <source>PDF (*.pdf);;HTML (*.html);;Numbers (*.csv)</source>
            <translation>PDF (*.pdf);;HTML (*.html);;数字 (*.csv)</translation>
        </message>
        <message>
            <source>%1 ends in none of .pdf, .html and .csv; name the file so that it does.</source>
            <translation>%1的扩展名不是.pdf、.html或.csv；请改用其中之一。</translation>
        </message>
        <message>
            <source>The report is in %1.</source>
            <translation>报告已写入%1。</translation>
        </message>
        <message>
            <source>No installed font has these letters, so they print as boxes: %1.</source>
            <translation>已安装的字体都没有这些字，打印时会显示为方框：%1。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ReviewPlace</name>
        <message>
            <source>Review</source>
            <translation>复盘</translation>
        </message>
        <message>
            <source>Sessions, frames and shots</source>
            <translation>场次、局和击球</translation>
        </message>
        <message>
            <source>Find the film…</source>
            <translation>查找视频…</translation>
        </message>
        <message>
            <source>Open a record to look at its shots.</source>
            <translation>打开记录即可查看其中的击球。</translation>
        </message>
        <message>
            <source>Open a record…</source>
            <translation>打开记录…</translation>
        </message>
        <message>
            <source>Look at the demo</source>
            <translation>查看示例</translation>
        </message>
        <message>
            <source>Filter the shots first; the list is then played from the chosen shot on.</source>
            <translation>请先筛选击球；列表将从所选的一杆开始播放。</translation>
        </message>
        <message>
            <source>%1 holds no session yet.</source>
            <translation>%1中还没有场次。</translation>
        </message>
        <message>
            <source>Choose a shot to see its film.</source>
            <translation>选择一杆即可观看其视频。</translation>
        </message>
        <message>
            <source>This frame was put in by hand: it has no film. The plan shows it.</source>
            <translation>本局是手工录入的，没有视频。可看俯视图。</translation>
        </message>
        <message>
            <source>%1 The plan still shows what was measured.</source>
            <translation>%1俯视图仍显示测得的内容。</translation>
        </message>
        <message>
            <source>Reading the film…</source>
            <translation>正在读取视频…</translation>
        </message>
        <message>
            <source>Where is %1?</source>
            <translation>%1在哪里？</translation>
        </message>
        <message>
            <source>Films (%1);;All files (*)</source>
            <translation>视频 (%1);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>教练</translation>
        </message>
        <message>
            <source>Changed: %1 of shot %2. Undo takes it back.</source>
            <translation>已更改：第%2杆的%1。可以撤销。</translation>
        </message>
        <message>
            <source>shot-%1.png</source>
            <translation>shot-%1.png</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <translation>保存图片</translation>
        </message>
        <message>
            <source>Pictures (*.png *.svg)</source>
            <translation>图片 (*.png *.svg)</translation>
        </message>
        <message>
            <source>The picture is in %1.</source>
            <translation>图片已写入%1。</translation>
        </message>
        <message>
            <source>A ball cannot be taken away here; correct the result when it fell.</source>
            <translation>此处不能拿走球；如果球已落袋，请更正结果。</translation>
        </message>
        <message>
            <source>Drag a ball to where it lay before the shot, or choose it with the tab key and move it with the arrow keys. D goes on to where the balls came to rest.</source>
            <translation>把球拖到击球前的位置，或用Tab键选择并用方向键移动。按D转到击球后的位置。</translation>
        </message>
        <message>
            <source>Drag a ball to where it came to rest. D ends.</source>
            <translation>把球拖到它停下的位置。按D结束。</translation>
        </message>
        <message>
            <source>This frame was measured live: nobody kept its film. The plan shows it.</source>
            <translation>此局为实时测量：未保留视频。平面图予以显示。</translation>
        </message>
        <message>
            <source>No guardian's consent to films that are handed on is noted for: %1.</source>
            <translation>未记录监护人同意转交其视频：%1。</translation>
        </message>
        <message>
            <source>No consent to films that are handed on is noted for: %1.</source>
            <translation>未记录同意转交其视频：%1。</translation>
        </message>
        <message>
            <source>Note it in Players, or save the plan as a clip: it shows nobody.</source>
            <translation>请在“球员”中记录，或将俯视图存为短片：其中没有人。</translation>
        </message>
        <message numerus="yes">
            <source>The clip is in %1 (%n image(s)).</source>
            <translation>
                <numerusform>短片已存入%1（%n帧）。</numerusform>
            </translation>
        </message>
        <message>
            <source>Film with the ways drawn over it (*.mp4 *.avi)</source>
            <translation>叠加球路的视频 (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Film alone (*.mp4 *.avi)</source>
            <translation>仅视频 (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Plan of the table (*.mp4 *.avi)</source>
            <translation>球台俯视图 (*.mp4 *.avi)</translation>
        </message>
        <message>
            <source>Save a clip</source>
            <translation>保存短片</translation>
        </message>
        <message>
            <source>shot-%1.mp4</source>
            <translation>第%1杆.mp4</translation>
        </message>
        <message>
            <source>Shot %1 is held: choose another one to see both side by side. Q ends it.</source>
            <translation>第%1杆已固定：再选一杆即可并排查看。按Q结束。</translation>
        </message>
        <message>
            <source>Taken back: a change of shot %1.</source>
            <translation>已撤回：第%1杆的一处更改。</translation>
        </message>
        <message numerus="yes">
            <source>Suggestions worked out anew: %n shot(s).</source>
            <translation>
                <numerusform>已重新计算建议：%n杆。</numerusform>
            </translation>
        </message>
        <message>
            <source>Films are played without sound.</source>
            <translation>播放视频时不出声。</translation>
        </message>
        <message>
            <source>Films are played with sound.</source>
            <translation>播放视频时出声。</translation>
        </message>
        <message>
            <source>Suggestions are worked out anew from what was corrected.</source>
            <translation>正在按更正重新计算建议。</translation>
        </message>
        <message>
            <source>The clip is written.</source>
            <translation>正在写入短片。</translation>
        </message>
        <message>
            <source>Pictures (*.png)</source>
            <translation>图片 (*.png)</translation>
        </message>
        <message>
            <source>Measure the demo film</source>
            <translation>测量演示视频</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigChoice</name>
        <message>
            <source>Rig</source>
            <translation>机位</translation>
        </message>
        <message>
            <source>Choose a rig file</source>
            <translation>选择机位文件</translation>
        </message>
        <message>
            <source>Rig files (*.json);;All files (*)</source>
            <translation>机位文件 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>rig.json, from Set-up or calibrate rig</source>
            <translation>rig.json，来自设置或 calibrate rig</translation>
        </message>
        <message>
            <source>Choose a table file</source>
            <translation>选择球台文件</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>球台文件 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>table.json, or a usual size such as 9ft</source>
            <translation>table.json，或常用尺寸如 9ft</translation>
        </message>
        <message>
            <source>There is no rig yet. It tells where the camera sits over the table; Set-up makes one from a film or still.</source>
            <translation>还没有机位。机位说明相机在球台上方的位置；可在设置中用视频或照片得出。</translation>
        </message>
        <message>
            <source>Make one in Set-&amp;up</source>
            <translation>在设置中确定(&amp;U)</translation>
        </message>
        <message>
            <source>Other files…</source>
            <translation>其他文件…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RigPage</name>
        <message>
            <source>&amp;Make the rig</source>
            <translation>建立机位(&amp;M)</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>标记</translation>
        </message>
        <message>
            <source>Off in the picture</source>
            <translation>画面中的偏差</translation>
        </message>
        <message>
            <source>Off on its rail</source>
            <translation>台边上的偏差</translation>
        </message>
        <message>
            <source>Found by the others</source>
            <translation>由其余标记推算的偏差</translation>
        </message>
        <message>
            <source>How well each tag agrees</source>
            <translation>各标记的吻合程度</translation>
        </message>
        <message>
            <source>Cushion</source>
            <translation>库边</translation>
        </message>
        <message>
            <source>Straight to (rms)</source>
            <translation>直线度（均方根）</translation>
        </message>
        <message>
            <source>At most</source>
            <translation>最大</translation>
        </message>
        <message>
            <source>How straight each cushion's nose comes out</source>
            <translation>各库边前沿的平直程度</translation>
        </message>
        <message>
            <source>no film yet</source>
            <translation>尚无视频</translation>
        </message>
        <message>
            <source>the lens from the cushions</source>
            <translation>由库边求出的镜头</translation>
        </message>
        <message>
            <source>no lens yet</source>
            <translation>尚无镜头</translation>
        </message>
        <message>
            <source>From %1, with %2 and the tags on the rails.</source>
            <translation>根据%1，使用%2和台边标记。</translation>
        </message>
        <message>
            <source>No rig yet.</source>
            <translation>还没有机位。</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 toward the foot</source>
            <translation>向置球端%1</translation>
        </message>
        <message>
            <source>%1 toward the head</source>
            <translation>向开球端%1</translation>
        </message>
        <message>
            <source>%1 to the left</source>
            <translation>向左%1</translation>
        </message>
        <message>
            <source>%1 to the right</source>
            <translation>向右%1</translation>
        </message>
        <message>
            <source>The camera sits %1 above the cloth, %2 and %3 of the table's middle.</source>
            <translation>相机在台呢上方%1，自台面中心%2、%3。</translation>
        </message>
        <message>
            <source>The cushions come out bent by up to %1: the lens belongs to another camera, or the film was corrected before. Calibrate the lens of this camera.</source>
            <translation>库边弯曲最多达%1：镜头属于另一台相机，或者视频已经过校正。请标定这台相机的镜头。</translation>
        </message>
        <message>
            <source>The cushions come out straight but the tags disagree by %1: measure their places and heights again.</source>
            <translation>库边是直的，但标记相差%1：请重新量标记的位置和高度。</translation>
        </message>
        <message>
            <source>Camera and cushions agree.</source>
            <translation>相机与库边相符。</translation>
        </message>
        <message>
            <source>The tags agree to %1 (%2 px).</source>
            <translation>各标记的吻合误差为%1（%2 px）。</translation>
        </message>
        <message>
            <source>%1 px</source>
            <translation>%1 px</translation>
        </message>
        <message>
            <source>A ball lies within %1 of its place at the middle and within %2 near a corner (95 %).</source>
            <translation>球的位置误差在台面中心不超过%1，在角落附近不超过%2（95%）。</translation>
        </message>
        <message>
            <source>Four tags and a lens from a board bring this to about 1 mm: some %1 less in the corner.</source>
            <translation>用四个标记加上标定板求出的镜头，误差可降到约1 mm：角落处约减小%1。</translation>
        </message>
        <message>
            <source>From %1, with %2, the cushions and the sights.</source>
            <translation>根据%1，使用%2、库边和标记点。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::RunPanel</name>
        <message>
            <source>Tries of this run</source>
            <translation>本轮各次</translation>
        </message>
        <message>
            <source>Met, missed, or not said; a place put in for the cue ball decides what it can</source>
            <translation>达成、未达成或未说明；标出的母球位置会决定它能判断的部分</translation>
        </message>
        <message>
            <source>Try %1 of %2</source>
            <translation>第%1次，共%2次</translation>
        </message>
        <message>
            <source>set-up %1</source>
            <translation>摆位%1</translation>
        </message>
        <message>
            <source>Met in full: %1</source>
            <translation>全部达成：%1</translation>
        </message>
        <message>
            <source>Missed thick %1, thin %2</source>
            <translation>偏厚%1，偏薄%2</translation>
        </message>
        <message>
            <source>not all known</source>
            <translation>不全知道</translation>
        </message>
        <message>
            <source>met</source>
            <translation>达成</translation>
        </message>
        <message>
            <source>missed</source>
            <translation>未达成</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionLight</name>
        <message>
            <source>Project the suggestion</source>
            <translation>投影建议打法</translation>
        </message>
        <message>
            <source>Show the suggested shot on the cloth: its line, and where the cue ball is to rest</source>
            <translation>在台呢上显示建议打法：击球线和母球应停住的位置</translation>
        </message>
        <message>
            <source>Project where balls belong</source>
            <translation>投影球的位置</translation>
        </message>
        <message>
            <source>After an interruption: show where balls must be put back</source>
            <translation>中断之后：显示球必须放回的位置</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>a ball</comment>
            <translation>未看到</translation>
        </message>
        <message>
            <source>Every ball lies where it belongs.</source>
            <translation>每颗球都在应在的位置。</translation>
        </message>
        <message>
            <source>To be put back: %1.</source>
            <comment>balls</comment>
            <translation>需要放回：%1。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SessionPlace</name>
        <message>
            <source>Session</source>
            <translation>场次</translation>
        </message>
        <message numerus="yes">
            <source>%n shot(s) now stand beside what would have been suggested: see Review.</source>
            <translation>
                <numerusform>已有%n杆可与当时会给出的建议对照：见“复盘”。</numerusform>
            </translation>
        </message>
        <message>
            <source>Shots of this frame</source>
            <translation>本局各杆</translation>
        </message>
        <message>
            <source>Choose the ball that was made and its pocket first.</source>
            <translation>请先选择打进的球及其袋口。</translation>
        </message>
        <message>
            <source>%1, frame %2</source>
            <translation>%1，第%2局</translation>
        </message>
        <message>
            <source>A session is under way: end it before another film is measured.</source>
            <translation>有场次正在进行：请先结束再测量其他视频。</translation>
        </message>
        <message numerus="yes">
            <source>%n ball(s) stand where the photo shows them. One look is not sure of the names: check them.</source>
            <translation>
                <numerusform>%n 颗球已按照片摆放。只看一眼，球号未必准确，请核对。</numerusform>
            </translation>
        </message>
        <message>
            <source>A photo of the table</source>
            <translation>球台照片</translation>
        </message>
        <message>
            <source>Pictures (*.jpg *.jpeg *.png);;All files (*)</source>
            <translation>图片 (*.jpg *.jpeg *.png);;所有文件 (*)</translation>
        </message>
        <message>
            <source>A photo needs the rig of the camera that took it: make one in Set-up first.</source>
            <translation>照片需要拍摄它的相机的机位：请先在“设置”中建立。</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>正在查找各球…</translation>
        </message>
        <message>
            <source>Coach</source>
            <translation>教练</translation>
        </message>
        <message>
            <source>Put the shot in first; then choose the ball that fell with it, and its pocket.</source>
            <translation>请先记录这一杆，再选出同时进袋的球和它的袋口。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetUpSection</name>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>请先选择相机，或代替它的视频。</translation>
        </message>
        <message>
            <source>The camera needs its rig to see where balls lie: make one in Set-up first.</source>
            <translation>相机需要机位才能看出球的位置：请先在“设置”中建立。</translation>
        </message>
        <message>
            <source>Stop looking</source>
            <translation>停止查看</translation>
        </message>
        <message>
            <source>Check the set-up</source>
            <translation>检查摆位</translation>
        </message>
        <message>
            <source>Looking for the balls…</source>
            <translation>正在查找各球…</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupDesk</name>
        <message>
            <source>There is no rig yet; make one in the step Rig.</source>
            <translation>还没有机位；请在“机位”步骤中建立。</translation>
        </message>
        <message>
            <source>What was kept of a set-up in %1 cannot be read; it begins anew.</source>
            <translation>%1中保存的设置无法读取；将从头开始。</translation>
        </message>
        <message>
            <source>There are no stills yet; add pictures of the board.</source>
            <translation>还没有照片；请添加标定板的图片。</translation>
        </message>
        <message>
            <source>There is no film of the table yet; choose one in the step Camera.</source>
            <translation>还没有球台的视频；请在“相机”步骤中选择。</translation>
        </message>
        <message>
            <source>There is no lens yet; calibrate it, or set up from the table itself without tags.</source>
            <translation>还没有镜头；请标定，或不用标记、直接用球台本身设置。</translation>
        </message>
        <message>
            <source>No rig is in use yet; go through the steps once.</source>
            <translation>还没有使用中的机位；请把各步骤走一遍。</translation>
        </message>
        <message>
            <source>The set-up is saved in %1 and is the one in use.</source>
            <translation>设置已保存到%1，并正在使用。</translation>
        </message>
        <message>
            <source>Something was changed meanwhile, so what came out no longer holds; make it again.</source>
            <translation>期间有内容被更改，所得结果不再有效；请重新进行。</translation>
        </message>
        <message>
            <source>Work goes on; stop it, or let it end, before a step is undone.</source>
            <translation>仍在处理；请先停止或等其结束，再撤销步骤。</translation>
        </message>
        <message>
            <source>start a new set-up</source>
            <translation>新建设置</translation>
        </message>
        <message>
            <source>the table file</source>
            <translation>球台文件</translation>
        </message>
        <message>
            <source>the lens file</source>
            <translation>镜头文件</translation>
        </message>
        <message>
            <source>the set-up in use opened</source>
            <translation>打开正在使用的设置</translation>
        </message>
        <message>
            <source>the film</source>
            <translation>视频</translation>
        </message>
        <message>
            <source>stills added</source>
            <translation>添加照片</translation>
        </message>
        <message>
            <source>stills removed</source>
            <translation>移除照片</translation>
        </message>
        <message>
            <source>the lens</source>
            <translation>镜头</translation>
        </message>
        <message>
            <source>the projector</source>
            <translation>投影仪</translation>
        </message>
        <message>
            <source>a still taken</source>
            <translation>拍摄一张照片</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SetupPlace</name>
        <message>
            <source>Set-up</source>
            <translation>设置</translation>
        </message>
        <message>
            <source>New set-up</source>
            <translation>新设置</translation>
        </message>
        <message>
            <source>%1 ✓</source>
            <comment>a step that is done</comment>
            <translation>%1 ✓</translation>
        </message>
        <message>
            <source>%1, done</source>
            <comment>a step</comment>
            <translation>%1，已完成</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SheetsView</name>
        <message>
            <source>Preview</source>
            <translation>预览</translation>
        </message>
        <message>
            <source>Sheet %1 of %2</source>
            <translation>第%1页，共%2页</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotFilter</name>
        <message>
            <source>Missed pots</source>
            <translation>未进的进攻球</translation>
        </message>
        <message>
            <source>Made, but position lost</source>
            <translation>进球但走位失误</translation>
        </message>
        <message>
            <source>Another shot was better</source>
            <translation>有更好的打法</translation>
        </message>
        <message>
            <source>Dearest choice of a frame not won</source>
            <translation>未赢之局中代价最大的选择</translation>
        </message>
        <message>
            <source>Fouls</source>
            <translation>犯规</translation>
        </message>
        <message>
            <source>Safeties</source>
            <translation>防守</translation>
        </message>
        <message>
            <source>Breaks</source>
            <translation>开球</translation>
        </message>
        <message>
            <source>Player</source>
            <translation>球员</translation>
        </message>
        <message>
            <source>Everybody</source>
            <translation>所有人</translation>
        </message>
        <message>
            <source>&amp;Player</source>
            <translation>球员(&amp;P)</translation>
        </message>
        <message>
            <source>Which shots</source>
            <translation>哪些击球</translation>
        </message>
        <message>
            <source>All shots</source>
            <translation>全部击球</translation>
        </message>
        <message>
            <source>Sho&amp;ts</source>
            <translation>击球(&amp;T)</translation>
        </message>
        <message>
            <source>Miss side</source>
            <translation>厚薄</translation>
        </message>
        <message>
            <source>Thick or thin</source>
            <translation>偏厚或偏薄</translation>
        </message>
        <message>
            <source>Too thick</source>
            <translation>偏厚</translation>
        </message>
        <message>
            <source>Too thin</source>
            <translation>偏薄</translation>
        </message>
        <message>
            <source>Mi&amp;ss side</source>
            <translation>厚薄(&amp;S)</translation>
        </message>
        <message>
            <source>C&amp;ut</source>
            <translation>切角(&amp;U)</translation>
        </message>
        <message>
            <source>Least cut</source>
            <translation>最小切角</translation>
        </message>
        <message>
            <source>Most cut</source>
            <translation>最大切角</translation>
        </message>
        <message>
            <source>Sp&amp;eed</source>
            <translation>球速(&amp;E)</translation>
        </message>
        <message>
            <source> m/s</source>
            <translation> m/s</translation>
        </message>
        <message>
            <source>Least speed</source>
            <translation>最低球速</translation>
        </message>
        <message>
            <source>Most speed</source>
            <translation>最高球速</translation>
        </message>
        <message>
            <source>Longest pot</source>
            <translation>最长的进攻球</translation>
        </message>
        <message>
            <source>Way of the cue ball times way of the object ball, in diamonds: of straight pots, 2 is short and 12 long</source>
            <translation>母球行程乘以目标球行程，以颗星计：对直线球，2为短，12为长</translation>
        </message>
        <message>
            <source>&amp;Longest</source>
            <translation>最长(&amp;L)</translation>
        </message>
        <message>
            <source>Pocket</source>
            <translation>袋口</translation>
        </message>
        <message>
            <source>Every pocket</source>
            <translation>所有袋口</translation>
        </message>
        <message>
            <source>P&amp;ocket</source>
            <translation>袋口(&amp;O)</translation>
        </message>
        <message>
            <source>Game</source>
            <translation>项目</translation>
        </message>
        <message>
            <source>Every game</source>
            <translation>所有项目</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>项目(&amp;G)</translation>
        </message>
        <message>
            <source>S&amp;ince</source>
            <translation>起始日(&amp;I)</translation>
        </message>
        <message>
            <source>Only since a day</source>
            <translation>仅某日以来</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>起始日</translation>
        </message>
        <message>
            <source>All sessions</source>
            <translation>全部场次</translation>
        </message>
        <message>
            <source>Back to all sessions</source>
            <translation>回到全部场次</translation>
        </message>
        <message>
            <source>Shots that were asked for</source>
            <translation>筛选出的击球</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>标签</translation>
        </message>
        <message>
            <source>With or without a tag</source>
            <translation>有无标签</translation>
        </message>
        <message>
            <source>T&amp;ag</source>
            <translation>标签(&amp;A)</translation>
        </message>
        <message>
            <source>Made, but on the wrong side of the next ball</source>
            <translation>进球但停在下一颗球的错误一侧</translation>
        </message>
        <message>
            <source>Corrected by a person</source>
            <translation>由人更正过</translation>
        </message>
        <message>
            <source>Not sure: please check</source>
            <translation>不确定：请核对</translation>
        </message>
        <message>
            <source>Put in by hand, or not followed</source>
            <translation>手工输入或未跟踪</translation>
        </message>
        <message>
            <source>Side of the cut</source>
            <translation>切球方向</translation>
        </message>
        <message>
            <source>Cut to the left or right</source>
            <translation>向左或向右切</translation>
        </message>
        <message>
            <source>Cut to the left</source>
            <translation>向左切</translation>
        </message>
        <message>
            <source>Cut to the right</source>
            <translation>向右切</translation>
        </message>
        <message>
            <source>Cut si&amp;de</source>
            <translation>切向(&amp;D)</translation>
        </message>
        <message>
            <source>Occasion</source>
            <translation>场合</translation>
        </message>
        <message>
            <source>Practice, match or lesson</source>
            <translation>练习、比赛或课程</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>练习</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>比赛</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>课程</translation>
        </message>
        <message>
            <source>Occasio&amp;n</source>
            <translation>场合(&amp;N)</translation>
        </message>
        <message>
            <source>Minutes into the session</source>
            <translation>场次开始后的分钟数</translation>
        </message>
        <message>
            <source>From the first shot</source>
            <translation>从第一杆起</translation>
        </message>
        <message>
            <source> min on</source>
            <translation> 分钟后</translation>
        </message>
        <message>
            <source>F&amp;rom</source>
            <translation>起于(&amp;R)</translation>
        </message>
        <message>
            <source>Until</source>
            <translation>截止日</translation>
        </message>
        <message>
            <source>Only until a day</source>
            <translation>只到某日</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>最后一天</translation>
        </message>
        <message>
            <source>Conditions</source>
            <translation>条件</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>球台</translation>
        </message>
        <message>
            <source>Every table</source>
            <translation>所有球台</translation>
        </message>
        <message>
            <source>Ta&amp;ble</source>
            <translation>球台(&amp;B)</translation>
        </message>
        <message>
            <source>Who else played</source>
            <translation>还有谁参加</translation>
        </message>
        <message>
            <source>Whoever else played</source>
            <translation>不论还有谁参加</translation>
        </message>
        <message>
            <source>&amp;With</source>
            <translation>同场(&amp;W)</translation>
        </message>
        <message numerus="yes">
            <source>%Ln shot(s)</source>
            <translation>
                <numerusform>%Ln杆</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotPanel</name>
        <message>
            <source>Details of the shot</source>
            <translation>击球详情</translation>
        </message>
        <message>
            <source>Where everything rested</source>
            <translation>各球停位</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>结果</translation>
        </message>
        <message>
            <source>Ruling</source>
            <translation>判罚</translation>
        </message>
        <message>
            <source>Choose a shot to read what was struck and what happened.</source>
            <translation>选择一杆，可看怎样出杆、发生了什么。</translation>
        </message>
        <message>
            <source>What was struck</source>
            <translation>怎样出杆</translation>
        </message>
        <message>
            <source>not observable: %1</source>
            <translation>无法观测：%1</translation>
        </message>
        <message>
            <source>Only one direction of the offset can be seen: the band holds the tip point.</source>
            <translation>只能看出偏移的一个方向：击点在这条带内。</translation>
        </message>
        <message>
            <source>Dotted ring: miscue limit.</source>
            <translation>点线圆圈：滑杆极限。</translation>
        </message>
        <message>
            <source>± one standard uncertainty. R: ball radius, + right and above.</source>
            <translation>± 一个标准不确定度。R：球半径，右和上为正。</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>发生了什么</translation>
        </message>
        <message>
            <source>First contact: %1</source>
            <translation>首先碰球：%1</translation>
        </message>
        <message>
            <source>The cue ball met no ball.</source>
            <translation>母球没有碰到任何球。</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>ball and pocket</comment>
            <translation>%1，%2</translation>
        </message>
        <message>
            <source>Nothing fell.</source>
            <translation>没有球落袋。</translation>
        </message>
        <message>
            <source>Fell: %1</source>
            <translation>落袋：%1</translation>
        </message>
        <message>
            <source>Events of the shot, seconds after the strike</source>
            <translation>这一杆的事件，出杆后的秒数</translation>
        </message>
        <message>
            <source>Why it missed</source>
            <translation>为何未进</translation>
        </message>
        <message>
            <source>Turn of the object ball's line, + to the left seen along the shot.</source>
            <translation>目标球走线的偏转，沿击球方向看向左为正。</translation>
        </message>
        <message>
            <source>Suggested and taken</source>
            <translation>建议与实打</translation>
        </message>
        <message>
            <source>suggested</source>
            <comment>column</comment>
            <translation>建议</translation>
        </message>
        <message>
            <source>taken</source>
            <comment>column</comment>
            <translation>实打</translation>
        </message>
        <message>
            <source>* Corrected by a person: %1</source>
            <translation>* 由人更正：%1</translation>
        </message>
        <message>
            <source>Corrections</source>
            <translation>更正</translation>
        </message>
        <message>
            <source>Take back</source>
            <translation>撤回</translation>
        </message>
        <message>
            <source>Take back: %1</source>
            <translation>撤回：%1</translation>
        </message>
        <message>
            <source>The cue before the strike</source>
            <translation>出杆前的球杆</translation>
        </message>
        <message>
            <source>The camera moved by %1 mm while this shot was played: its places are doubtful.</source>
            <translation>打这一杆时相机移动了%1毫米：其位置存疑。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::ShotTreeModel</name>
        <message numerus="yes">
            <source>%n shot(s)</source>
            <translation>
                <numerusform>%n杆</numerusform>
            </translation>
        </message>
        <message>
            <source>Frame %1</source>
            <translation>第%1局</translation>
        </message>
        <message>
            <source>Still running, or its film was not read to the end.</source>
            <translation>仍在进行，或视频没有读完。</translation>
        </message>
        <message>
            <source>–</source>
            <comment>speed not observable</comment>
            <translation>–</translation>
        </message>
        <message>
            <source>Shot %1, %2, %3</source>
            <translation>第%1杆，%2，%3</translation>
        </message>
        <message>
            <source>Shot</source>
            <translation>击球</translation>
        </message>
        <message>
            <source>Result</source>
            <translation>结果</translation>
        </message>
        <message>
            <source>Speed</source>
            <translation>球速</translation>
        </message>
        <message>
            <source>corrected by a person</source>
            <translation>由人更正</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StartForm</name>
        <message>
            <source>A session without a camera</source>
            <translation>不使用相机的场次</translation>
        </message>
        <message>
            <source>Put the balls down, say what was played and what happened; the referee keeps turn and score.</source>
            <translation>摆好球，说明打了什么、结果如何；裁判会记住轮到谁和比分。</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>名称(&amp;N)</translation>
        </message>
        <message>
            <source>No game: practice without a referee</source>
            <translation>无比赛项目：无裁判训练</translation>
        </message>
        <message>
            <source>&amp;Game</source>
            <translation>项目(&amp;G)</translation>
        </message>
        <message>
            <source>One or two names with a comma; who breaks comes first</source>
            <translation>一个或两个姓名，用逗号分隔；开球者在前</translation>
        </message>
        <message>
            <source>&amp;Players</source>
            <translation>球员(&amp;P)</translation>
        </message>
        <message>
            <source>A usual size, or the path of a table file</source>
            <translation>常用尺寸，或球台文件的路径</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>球台(&amp;T)</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>训练</translation>
        </message>
        <message>
            <source>Match</source>
            <translation>比赛</translation>
        </message>
        <message>
            <source>Lesson</source>
            <translation>教学</translation>
        </message>
        <message>
            <source>&amp;For</source>
            <translation>用途(&amp;F)</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>开始</translation>
        </message>
        <message>
            <source>Go on with it</source>
            <translation>继续</translation>
        </message>
        <message>
            <source>Kept in %1.</source>
            <translation>保存在%1。</translation>
        </message>
        <message>
            <source>The session "%1" was not ended.</source>
            <translation>场次“%1”没有结束。</translation>
        </message>
        <message>
            <source>By hand</source>
            <translation>手动</translation>
        </message>
        <message>
            <source>From a film</source>
            <translation>从视频</translation>
        </message>
        <message>
            <source>A session from a film</source>
            <translation>来自视频的场次</translation>
        </message>
        <message>
            <source>Every shot of the film is measured and ruled; you may stop at any time and keep what was measured.</source>
            <translation>视频中的每一杆都会被测量和判定；可随时停止并保留已测结果。</translation>
        </message>
        <message>
            <source>Measure the film</source>
            <translation>测量视频</translation>
        </message>
        <message>
            <source>Choose a film</source>
            <translation>选择视频</translation>
        </message>
        <message>
            <source>Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)</source>
            <translation>视频 (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Drop a film on the window, or choose one</source>
            <translation>将视频拖到窗口，或选择一个</translation>
        </message>
        <message>
            <source>Fil&amp;m</source>
            <translation>视频(&amp;M)</translation>
        </message>
        <message>
            <source>&amp;Rig</source>
            <translation>机位(&amp;R)</translation>
        </message>
        <message>
            <source>&amp;Look at it in Review</source>
            <translation>在复盘中查看(&amp;L)</translation>
        </message>
        <message>
            <source>Measure it &amp;again</source>
            <translation>重新测量(&amp;A)</translation>
        </message>
        <message>
            <source>Choose the film first.</source>
            <translation>请先选择视频。</translation>
        </message>
        <message>
            <source>Choose the rig of this camera first; Set-up makes one from a film or still of the table.</source>
            <translation>请先选择此相机的机位；设置可用球台的视频或照片得出。</translation>
        </message>
        <message>
            <source>Choose the table first: the table.json that was measured, or a usual size such as 9ft.</source>
            <translation>请先选择球台：测得的 table.json，或常用尺寸如 9ft。</translation>
        </message>
        <message>
            <source>Live</source>
            <translation>实时</translation>
        </message>
        <message>
            <source>A session while it is played</source>
            <translation>进行中的场次</translation>
        </message>
        <message>
            <source>A camera looks on: every shot is measured and ruled as soon as the balls rest. Ask those who play before you film them.</source>
            <translation>相机在旁观看：球一静止，每一杆即被测量和判定。拍摄前请征得球手同意。</translation>
        </message>
        <message>
            <source>&amp;Camera</source>
            <translation>相机(&amp;C)</translation>
        </message>
        <message>
            <source>Choose a camera first, or the film that stands in for one.</source>
            <translation>请先选择相机，或代替它的视频。</translation>
        </message>
        <message>
            <source>&amp;Keep the film beside the record</source>
            <translation>在记录旁保存视频(&amp;K)</translation>
        </message>
        <message>
            <source>Only of people whose consent to being filmed is noted in Players; measured is either way</source>
            <translation>仅限在“球员”中记有拍摄同意的人；无论如何都会测量</translation>
        </message>
        <message>
            <source>Measure it all the &amp;same</source>
            <translation>仍然测量(&amp;S)</translation>
        </message>
        <message>
            <source>Mend &amp;it in Set-up</source>
            <translation>在设置中改正(&amp;I)</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillCamera</name>
        <message>
            <source>No camera is chosen; connect one, or choose a film that stands in for it.</source>
            <translation>未选择相机；请连接一台，或选择一段代替它的视频。</translation>
        </message>
        <message>
            <source>Blurred: the board's edges are %1 px wide. Hold it still, or light it better.</source>
            <translation>模糊：标定板的边缘宽%1像素。请拿稳，或改善照明。</translation>
        </message>
        <message>
            <source>The camera's image is mirrored; switch that off in the camera's own settings.</source>
            <translation>相机画面是镜像的；请在相机设置中关闭镜像。</translation>
        </message>
        <message>
            <source>This print has the old layout, its first square light; print the board anew.</source>
            <translation>这份打印件是旧版式，首格为浅色；请重新打印标定板。</translation>
        </message>
        <message>
            <source>The board is not seen; hold it so that most of its squares show.</source>
            <translation>看不到标定板；请让大部分方格可见。</translation>
        </message>
        <message>
            <source>The board is where %1 has it already; move or tilt it.</source>
            <translation>标定板的位置与%1相同；请移动或倾斜它。</translation>
        </message>
        <message>
            <source>The stills so far are %1 × %2 px and this image has %3 × %4 px; a lens belongs to one image size.</source>
            <translation>已有照片为%1 × %2像素，此画面为%3 × %4像素；一个镜头只对应一种图像尺寸。</translation>
        </message>
        <message>
            <source>Sharp: the board's edges are %1 px wide.</source>
            <translation>清晰：标定板的边缘宽%1像素。</translation>
        </message>
        <message>
            <source>The board is seen; it is too small in the picture to say how sharp it is.</source>
            <translation>看到标定板；它在画面中太小，无法判断清晰度。</translation>
        </message>
        <message>
            <source>With it the board was in %1 % of the picture, after %2 %.</source>
            <translation>加上这张，标定板覆盖画面的%1%，此前为%2%。</translation>
        </message>
        <message>
            <source>The board was here before; the empty parts of the picture would gain more.</source>
            <translation>标定板到过这里；放到画面的空白处收益更大。</translation>
        </message>
        <message>
            <source>The board was changed; start the camera anew, so that it is looked for.</source>
            <translation>标定板已更改；请重新启动相机以便查找它。</translation>
        </message>
        <message>
            <source>Not taken. %1</source>
            <comment>a sentence that says why</comment>
            <translation>未拍下。%1</translation>
        </message>
        <message>
            <source>Stop the ca&amp;mera</source>
            <translation>停止相机(&amp;M)</translation>
        </message>
        <message>
            <source>Look through the ca&amp;mera</source>
            <translation>通过相机查看(&amp;M)</translation>
        </message>
        <message>
            <source>Ta&amp;ke this still</source>
            <translation>拍下这张(&amp;K)</translation>
        </message>
        <message>
            <source>Take stills with a ca&amp;mera…</source>
            <translation>用相机拍摄照片(&amp;M)…</translation>
        </message>
        <message>
            <source>Let the camera run, hold the board to it, and take a still wherever the picture is still empty.</source>
            <translation>让相机运行，把标定板对着它，在画面还空着的地方各拍一张。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::StillView</name>
        <message>
            <source>What the camera sees of the board</source>
            <translation>相机看到的标定板</translation>
        </message>
    </context>
    <context>
        <name>ferrule::SuggestionPanel</name>
        <message>
            <source>For whom a shot is suggested</source>
            <translation>为谁建议打法</translation>
        </message>
        <message>
            <source>for a beginner</source>
            <translation>面向初学者</translation>
        </message>
        <message>
            <source>for a club player</source>
            <translation>面向俱乐部球员</translation>
        </message>
        <message>
            <source>for an expert</source>
            <translation>面向高手</translation>
        </message>
        <message>
            <source>Suggested shots, best first</source>
            <translation>建议的打法，最好的在前</translation>
        </message>
        <message>
            <source>What if the cue ball left at this speed</source>
            <translation>假如母球以此球速出发</translation>
        </message>
        <message>
            <source>What if the tip struck so far right of centre, in ball radii</source>
            <translation>假如击点在球心右侧这么远，以球半径计</translation>
        </message>
        <message>
            <source>What if the tip struck so far above centre, in ball radii</source>
            <translation>假如击点在球心上方这么远，以球半径计</translation>
        </message>
        <message>
            <source>What if: speed</source>
            <translation>假如：球速</translation>
        </message>
        <message>
            <source>side</source>
            <translation>左右</translation>
        </message>
        <message>
            <source>height</source>
            <translation>高低</translation>
        </message>
        <message>
            <source>for the player at the table</source>
            <translation>面向当前击球的球员</translation>
        </message>
        <message>
            <source>for %1</source>
            <comment>a player</comment>
            <translation>面向%1</translation>
        </message>
        <message>
            <source>Looking for a shot…</source>
            <translation>正在寻找打法…</translation>
        </message>
        <message>
            <source>With this speed and tip point no aim pots the ball.</source>
            <translation>以此球速和击点，怎样瞄准都打不进。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TableEditor</name>
        <message>
            <source>Table; tab chooses a ball, the arrow keys move it, page up and down choose its pocket</source>
            <translation>球台；Tab 键选球，方向键移动它，上翻页和下翻页键选它的袋口</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TablePage</name>
        <message>
            <source>Such as: Hall, table 2</source>
            <translation>例如：球房，2号台</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>名称(&amp;N)</translation>
        </message>
        <message>
            <source>%1: %2 × %3 mm</source>
            <translation>%1：%2 × %3 mm</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>实测</translation>
        </message>
        <message>
            <source>&amp;Size</source>
            <translation>尺寸(&amp;S)</translation>
        </message>
        <message>
            <source>Length from nose to nose</source>
            <translation>从前沿到前沿的长度</translation>
        </message>
        <message>
            <source>&amp;Length</source>
            <translation>长(&amp;L)</translation>
        </message>
        <message>
            <source>Width from nose to nose</source>
            <translation>从前沿到前沿的宽度</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>宽(&amp;W)</translation>
        </message>
        <message>
            <source>Diagonal A: head right to foot left</source>
            <translation>对角线A：开球端右角至置球端左角</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>未测量</translation>
        </message>
        <message>
            <source>Diagonal &amp;A</source>
            <translation>对角线A(&amp;A)</translation>
        </message>
        <message>
            <source>Diagonal B: head left to foot right</source>
            <translation>对角线B：开球端左角至置球端右角</translation>
        </message>
        <message>
            <source>Diagonal &amp;B</source>
            <translation>对角线B(&amp;B)</translation>
        </message>
        <message>
            <source>&amp;Open a table file…</source>
            <translation>打开球台文件(&amp;O)…</translation>
        </message>
        <message>
            <source>Open a table file</source>
            <translation>打开球台文件</translation>
        </message>
        <message>
            <source>Table files (*.json);;All files (*)</source>
            <translation>球台文件 (*.json);;所有文件 (*)</translation>
        </message>
        <message>
            <source>Both diagonals, from nose corner to nose corner, tell whether the table is square.</source>
            <translation>量两条对角线（从前沿的角到角），可知球台是否方正。</translation>
        </message>
        <message>
            <source>No table has these lengths and diagonals (%1 mm apart); measure again, every time from nose to nose.</source>
            <translation>没有球台会有这样的边长和对角线（相差%1 mm）；请重新测量，每次都从前沿到前沿。</translation>
        </message>
        <message>
            <source>Square, as well as a tape can tell (%1 mm).</source>
            <translation>方正，在卷尺所能测出的范围内（%1 mm）。</translation>
        </message>
        <message>
            <source>left</source>
            <comment>of the table</comment>
            <translation>左</translation>
        </message>
        <message>
            <source>right</source>
            <comment>of the table</comment>
            <translation>右</translation>
        </message>
        <message>
            <source>Out of square: the foot is pushed %1 mm to the %2 against the head. A ball's place is off by up to half of that; have the rails set, or measure from noses that are straight.</source>
            <translation>不方正：置球端相对开球端向%2偏移%1 mm。球的位置误差最多可达其一半；请找人校正库边，或从平直的前沿测量。</translation>
        </message>
        <message>
            <source>the table's name</source>
            <translation>球台名称</translation>
        </message>
        <message>
            <source>the table's size</source>
            <translation>球台尺寸</translation>
        </message>
        <message>
            <source>the diagonals</source>
            <translation>对角线</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TagsPage</name>
        <message>
            <source>&amp;No tags: take the camera's place from the cushions</source>
            <translation>没有标记：由库边求出相机位置(&amp;N)</translation>
        </message>
        <message>
            <source>left</source>
            <comment>side of the picture</comment>
            <translation>左侧</translation>
        </message>
        <message>
            <source>right</source>
            <comment>side of the picture</comment>
            <translation>右侧</translation>
        </message>
        <message>
            <source>top</source>
            <comment>side of the picture</comment>
            <translation>上方</translation>
        </message>
        <message>
            <source>bottom</source>
            <comment>side of the picture</comment>
            <translation>下方</translation>
        </message>
        <message>
            <source>The picture has the table's &amp;head at its</source>
            <translation>球台开球端在画面的(&amp;H)</translation>
        </message>
        <message>
            <source>Side of the tags' black square</source>
            <translation>标记黑色方块的边长</translation>
        </message>
        <message>
            <source>&amp;Black side</source>
            <translation>黑色方块边长(&amp;B)</translation>
        </message>
        <message>
            <source>Height of the tags above the cloth</source>
            <translation>标记离台呢的高度</translation>
        </message>
        <message>
            <source>H&amp;eight above the cloth</source>
            <translation>离台呢高度(&amp;E)</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>纸张</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Letter</translation>
        </message>
        <message>
            <source>Make the &amp;sheet (PDF)…</source>
            <translation>制作打印页（PDF）(&amp;S)…</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>打印</translation>
        </message>
        <message>
            <source>Lay one tag flat near each corner of the rails, face up, where no ball or hand covers them all. Measure the black square's corners 1 to 4 (top left, top right, bottom right, bottom left of the print) from the table's middle, x toward the foot, y to the left as seen from the head, to half a millimetre. Corners 3 and 4 may be left empty.</source>
            <translation>在台边的每个角附近平放一个标记，正面朝上，放在不会被球或手全部遮住的地方。从台面中心量出黑色方块的角1至4（打印件的左上、右上、右下、左下），x向置球端，y为从开球端看去的左方，精确到半毫米。角3和角4可以留空。</translation>
        </message>
        <message>
            <source>The tags' corners in millimetres from the table's middle</source>
            <translation>标记各角距台面中心的毫米数</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>标记</translation>
        </message>
        <message>
            <source>Height</source>
            <translation>高度</translation>
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
            <translation>增加标记(&amp;A)</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>移除(&amp;R)</translation>
        </message>
        <message>
            <source>Make the sheet</source>
            <translation>制作打印页</translation>
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
            <translation>标记已写入%1；请按100%打印并量出上面的线。</translation>
        </message>
        <message>
            <source>"%1" is no length in millimetres; type a number such as -1117.5.</source>
            <translation>“%1”不是毫米长度；请输入数字，例如-1117.5。</translation>
        </message>
        <message>
            <source>The cushions alone leave a ball's place open by several millimetres; four tags bring about one. The step Trust shows it.</source>
            <translation>只用库边，球的位置会有几毫米不确定；四个标记可降到约一毫米。“可信度”步骤会显示。</translation>
        </message>
        <message numerus="yes">
            <source>%n tag(s) measured; at least three are needed, four check each other.</source>
            <translation>
                <numerusform>已量%n个标记；至少需要三个，四个可互相校验。</numerusform>
            </translation>
        </message>
        <message>
            <source>without tags</source>
            <translation>不用标记</translation>
        </message>
        <message>
            <source>the head's side</source>
            <translation>开球端所在边</translation>
        </message>
        <message>
            <source>the tags' side</source>
            <translation>标记边长</translation>
        </message>
        <message>
            <source>the tags' height</source>
            <translation>标记高度</translation>
        </message>
        <message>
            <source>a tag added</source>
            <translation>添加标记</translation>
        </message>
        <message>
            <source>a tag removed</source>
            <translation>移除标记</translation>
        </message>
        <message>
            <source>tag %1, as measured</source>
            <translation>标记%1的测量值</translation>
        </message>
        <message>
            <source>From its lines alone a table cannot be told from the same one turned end for end, seen in a mirror, or a twentieth larger or smaller: the head's side here, a picture that is not mirrored and the size in the step Table are taken on your word.</source>
            <translation>仅凭线条，无法区分一张球台与它掉头、镜像或大小相差二十分之一的样子：此处的开球端方位、画面未镜像以及“球台”步骤中的尺寸都以您所说为准。</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TimeLine</name>
        <message>
            <source>Time line of the session</source>
            <translation>场次时间线</translation>
        </message>
        <message>
            <source>made above, missed below</source>
            <translation>上方进球，下方未进</translation>
        </message>
    </context>
    <context>
        <name>ferrule::TipPointView</name>
        <message>
            <source>Tip point on the cue ball's face</source>
            <translation>母球正面的击点</translation>
        </message>
    </context>
    <context>
        <name>ferrule::UndoRow</name>
        <message>
            <source>Undo: %1 (Ctrl+Z)</source>
            <translation>撤销：%1 (Ctrl+Z)</translation>
        </message>
        <message>
            <source>Nothing to undo</source>
            <translation>没有可撤销的内容</translation>
        </message>
        <message>
            <source>Redo: %1 (Ctrl+Y)</source>
            <translation>重做：%1 (Ctrl+Y)</translation>
        </message>
        <message>
            <source>Nothing to redo</source>
            <translation>没有可重做的内容</translation>
        </message>
    </context>
    <context>
        <name>ferrule::WorkStrip</name>
        <message>
            <source>Progress</source>
            <translation>进度</translation>
        </message>
    </context>
</TS>
