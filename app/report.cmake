# SPDX-License-Identifier: GPL-3.0-or-later
# Reports and charts: needs pictures and fonts, but no widgets.
find_package(PkgConfig REQUIRED)
pkg_check_modules(QPDF REQUIRED IMPORTED_TARGET libqpdf)

add_library(ferrule_report STATIC
  report/chart_csv.cpp
  report/chart_painter.cpp
  report/chart_words.cpp
  report/drill_charts.cpp
  report/pdf_structure.cpp
  report/play_charts.cpp
  report/report_builder.cpp
  report/report_charts.cpp
  report/report_csv.cpp
  report/report_first_page.cpp
  report/report_html.cpp
  report/report_pdf.cpp
  report/report_press.cpp
  report/report_sheet.cpp
  report/report_words.cpp
  report/shot_charts.cpp
  window/inks.cpp)
add_library(Ferrule::report ALIAS ferrule_report)
# Its own smart pointer is gone in favour of the standard one.
target_compile_definitions(ferrule_report PRIVATE POINTERHOLDER_TRANSITION=4)
target_include_directories(ferrule_report PUBLIC ${CMAKE_SOURCE_DIR})
target_link_libraries(ferrule_report PUBLIC Ferrule::drills Ferrule::progress Ferrule::words Qt6::Gui Qt6::Svg
  PRIVATE PkgConfig::QPDF)
