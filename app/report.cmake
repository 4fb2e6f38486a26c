# SPDX-License-Identifier: GPL-3.0-or-later
# Reports and charts. Qt Charts stands on widgets, so that a report needs a QApplication, but no display.
find_package(PkgConfig REQUIRED)
pkg_check_modules(QPDF REQUIRED IMPORTED_TARGET libqpdf)

add_library(ferrule_report STATIC
  picture/plan_mapping.cpp
  picture/table_painter.cpp
  report/bar_charts.cpp
  report/chart.cpp
  report/chart_caption.cpp
  report/chart_csv.cpp
  report/chart_painter.cpp
  report/chart_plot.cpp
  report/chart_style.cpp
  report/chart_words.cpp
  report/drill_charts.cpp
  report/grid_chart.cpp
  report/map_chart.cpp
  report/pdf_structure.cpp
  report/play_charts.cpp
  report/point_chart.cpp
  report/report_builder.cpp
  report/report_charts.cpp
  report/report_csv.cpp
  report/report_first_page.cpp
  report/report_html.cpp
  report/report_pdf.cpp
  report/report_press.cpp
  report/report_sheet.cpp
  report/report_words.cpp
  report/session_chart.cpp
  report/shot_charts.cpp
  window/inks.cpp)
add_library(Ferrule::report ALIAS ferrule_report)
# Its own smart pointer is gone in favour of the standard one.
target_compile_definitions(ferrule_report PRIVATE POINTERHOLDER_TRANSITION=4)
target_include_directories(ferrule_report PUBLIC ${CMAKE_SOURCE_DIR})
target_link_libraries(ferrule_report PUBLIC Ferrule::drills Ferrule::progress Ferrule::words Qt6::Gui Qt6::Svg
  PRIVATE Qt6::Charts PkgConfig::QPDF)
