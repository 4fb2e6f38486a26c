# SPDX-License-Identifier: GPL-3.0-or-later
# The window and the program that opens it.
# English holds the plural forms alone.
set(translation_files ${CMAKE_SOURCE_DIR}/translations/ferrule_en.ts)
foreach(language de es fr zh_CN)
  list(APPEND translation_files ${CMAKE_SOURCE_DIR}/translations/ferrule_${language}.ts)
endforeach()

add_library(ferrule_window STATIC
  console/report_command.cpp
  drills/detail_panel.cpp
  drills/drill_desk.cpp
  drills/drill_edits.cpp
  drills/drill_painter.cpp
  drills/drill_picture.cpp
  drills/drill_service.cpp
  drills/drills_layout.cpp
  drills/drills_place.cpp
  drills/editor_panel.cpp
  drills/run_panel.cpp
  drills/set_up_section.cpp
  drills/set_up_watch.cpp
  drills/zone_editor.cpp
  film/clip_file.cpp
  film/film_file.cpp
  film/film_service.cpp
  film/film_sound.cpp
  live/camera_list.cpp
  live/camera_picture.cpp
  live/camera_source.cpp
  live/paced_film.cpp
  picture/ball_painter.cpp
  picture/film_projection.cpp
  picture/film_view.cpp
  picture/image_of.cpp
  picture/picture_file.cpp
  picture/picture_view.cpp
  picture/plan_painter.cpp
  picture/planned_ways.cpp
  picture/plan_picture.cpp
  picture/plan_view.cpp
  picture/shot_painter.cpp
  players/consent_section.cpp
  players/erase_panel.cpp
  players/note_section.cpp
  players/people_desk.cpp
  players/people_list_model.cpp
  players/people_service.cpp
  players/people_words.cpp
  players/person_form.cpp
  players/players_layout.cpp
  players/players_place.cpp
  progress/chart_export.cpp
  progress/chart_view.cpp
  progress/figures.cpp
  progress/filter_bar.cpp
  progress/progress_layout.cpp
  progress/progress_place.cpp
  progress/progress_service.cpp
  progress/progress_words.cpp
  projector/light_image.cpp
  projector/projector_desk.cpp
  projector/projector_row.cpp
  projector/projector_screen.cpp
  reports/reports_place.cpp
  reports/sheets_view.cpp
  review/clip_desk.cpp
  review/clip_images.cpp
  review/compare_view.cpp
  review/correction_desk.cpp
  review/correction_menu.cpp
  review/correction_service.cpp
  review/correction_words.cpp
  review/cue_section.cpp
  review/event_list_model.cpp
  review/judgement_section.cpp
  review/judging_anew.cpp
  review/legend.cpp
  review/moment.cpp
  review/outcome_mark.cpp
  review/picture_splitter.cpp
  review/playhead.cpp
  review/record_service.cpp
  review/record_source.cpp
  review/remarks_section.cpp
  review/review_clips.cpp
  review/review_compare.cpp
  review/review_corrections.cpp
  review/review_desk.cpp
  review/review_layout.cpp
  review/review_list.cpp
  review/review_place.cpp
  review/review_picture.cpp
  review/review_places.cpp
  review/review_words.cpp
  review/shot_comparison.cpp
  review/shot_filter.cpp
  review/shot_panel.cpp
  review/shot_row_delegate.cpp
  review/shot_tree_model.cpp
  review/shot_words.cpp
  review/suggested_shot.cpp
  review/time_axis.cpp
  review/time_line.cpp
  review/tip_point_view.cpp
  session/answer_service.cpp
  session/ball_tray.cpp
  session/camera_choice.cpp
  session/demo_session.cpp
  session/film_desk.cpp
  session/film_page.cpp
  session/film_words.cpp
  session/guest_bar.cpp
  session/guest_service.cpp
  session/hand_desk.cpp
  session/hand_service.cpp
  session/judge_service.cpp
  session/known_rigs.cpp
  session/live_desk.cpp
  session/live_page.cpp
  session/live_words.cpp
  session/measured_shot_list.cpp
  session/measured_shots.cpp
  session/measuring_feed.cpp
  session/measuring_pictures.cpp
  session/measuring_words.cpp
  session/path_field.cpp
  session/question_panel.cpp
  session/rig_choice.cpp
  session/session_light.cpp
  session/session_page.cpp
  session/session_films.cpp
  session/session_place.cpp
  session/session_shots.cpp
  session/session_words.cpp
  session/start_form.cpp
  session/suggestion_desk.cpp
  session/suggestion_panel.cpp
  session/suggestion_searcher.cpp
  session/suggestion_service.cpp
  session/table_editor.cpp
  setup/camera_page.cpp
  setup/chain_pictures.cpp
  setup/chain_row.cpp
  setup/check_page.cpp
  setup/coverage_view.cpp
  setup/error_map_view.cpp
  setup/figure_table.cpp
  setup/keep_page.cpp
  setup/lens_page.cpp
  setup/lines_fitting.cpp
  setup/lines_list.cpp
  setup/lines_panel.cpp
  setup/lines_view.cpp
  setup/loupe.cpp
  setup/made_rig.cpp
  setup/map_page.cpp
  setup/mark_words.cpp
  setup/measure_picture.cpp
  setup/picture_guess.cpp
  setup/print_sheets.cpp
  setup/projector_page.cpp
  setup/rig_in_use.cpp
  setup/rig_page.cpp
  setup/setup_desk.cpp
  setup/setup_files.cpp
  setup/setup_page.cpp
  setup/setup_place.cpp
  setup/setup_state.cpp
  setup/setup_words.cpp
  setup/setup_work.cpp
  setup/still_camera.cpp
  setup/still_view.cpp
  setup/still_watch.cpp
  setup/table_page.cpp
  setup/tags_page.cpp
  window/about_page.cpp
  window/actions.cpp
  window/appearance.cpp
  window/background_job.cpp
  window/card.cpp
  window/empty_place.cpp
  window/frame_style.cpp
  window/help_page.cpp
  window/ink_icon.cpp
  window/key_page.cpp
  window/languages.cpp
  window/main_window.cpp
  window/message_bar.cpp
  window/own_record.cpp
  window/plain_parts.cpp
  window/place_list.cpp
  window/places.cpp
  window/recent_records.cpp
  window/record_keeper.cpp
  window/spoken_role.cpp
  window/tool_button.cpp
  window/undo_row.cpp
  window/vertical_scroll.cpp
  window/window_call.cpp
  window/window_host.cpp
  window/work_strip.cpp
  window/wrapping_row.cpp
  words/answer_words.cpp
  words/ruling_sentence.cpp
  words/ruling_words.cpp
  words/set_up_words.cpp
  ${CMAKE_SOURCE_DIR}/resources/icons/icons.qrc)
add_library(Ferrule::window ALIAS ferrule_window)
set_target_properties(ferrule_window PROPERTIES AUTOMOC ON AUTORCC ON)
target_include_directories(ferrule_window PUBLIC ${CMAKE_SOURCE_DIR})
target_link_libraries(ferrule_window PUBLIC
  Ferrule::console Ferrule::record Ferrule::report Ferrule::vision Qt6::Multimedia Qt6::Widgets Qt6::Svg)
# Headers are found from the root of the tree; they lie beside their sources for moc all the same.
target_sources(ferrule_window PRIVATE
  drills/detail_panel.h drills/drill_desk.h drills/drill_picture.h drills/drill_service.h drills/drills_place.h drills/editor_panel.h drills/run_panel.h drills/set_up_section.h drills/set_up_watch.h drills/zone_editor.h
  picture/film_view.h picture/picture_view.h picture/plan_picture.h picture/plan_view.h film/film_service.h
  players/consent_section.h players/erase_panel.h players/note_section.h players/people_desk.h players/people_list_model.h players/people_service.h
  players/person_form.h players/players_place.h
  progress/chart_view.h progress/filter_bar.h progress/progress_place.h progress/progress_service.h reports/reports_place.h reports/sheets_view.h
  film/film_sound.h review/clip_desk.h review/compare_view.h review/judging_anew.h window/work_strip.h
  review/correction_desk.h review/correction_service.h review/event_list_model.h review/legend.h review/picture_splitter.h review/playhead.h review/record_service.h review/remarks_section.h review/review_desk.h
  review/review_place.h review/shot_filter.h review/shot_panel.h review/shot_row_delegate.h review/shot_tree_model.h review/time_line.h
  review/tip_point_view.h session/answer_service.h session/ball_tray.h session/camera_choice.h session/film_desk.h session/film_page.h session/guest_bar.h session/guest_service.h session/hand_desk.h session/hand_service.h session/judge_service.h
  live/camera_source.h live/live_source.h live/paced_film.h session/live_desk.h session/live_page.h session/measured_shot_list.h session/measured_shots.h session/measuring_feed.h session/measuring_pictures.h session/path_field.h session/question_panel.h session/rig_choice.h session/session_light.h session/session_place.h
  session/start_form.h session/suggestion_desk.h session/suggestion_panel.h session/suggestion_searcher.h session/suggestion_service.h session/table_editor.h
  projector/projector_desk.h projector/projector_row.h projector/projector_screen.h setup/camera_page.h setup/chain_row.h setup/check_page.h setup/coverage_view.h setup/error_map_view.h setup/keep_page.h setup/lens_page.h setup/lines_fitting.h setup/lines_list.h setup/lines_panel.h setup/lines_view.h setup/map_page.h setup/measure_picture.h setup/projector_page.h setup/rig_page.h setup/setup_desk.h setup/setup_page.h setup/setup_place.h setup/still_camera.h setup/still_view.h setup/still_watch.h setup/table_page.h setup/tags_page.h
  window/about_page.h window/actions.h window/background_job.h window/card.h window/frame_style.h window/help_page.h window/key_page.h window/main_window.h
  window/message_bar.h window/place.h
  window/place_list.h window/undo_row.h window/vertical_scroll.h window/window_host.h)

# Reading Qt and the record's values costs more than any file here that uses them.
target_precompile_headers(ferrule_window PRIVATE <QtWidgets> <memory> <optional> <string> <vector>
  ${CMAKE_SOURCE_DIR}/core/record/record_values.h)

# The window's words in other languages, inside the library.
qt_add_lrelease(ferrule_window TS_FILES ${translation_files} QM_FILES_OUTPUT_VARIABLE qm_files)
set(translations_qrc ${CMAKE_CURRENT_BINARY_DIR}/translations.qrc)
file(WRITE ${translations_qrc} "<RCC><qresource prefix=\"/translations\">\n")
foreach(qm ${qm_files})
  get_filename_component(qm_name ${qm} NAME)
  file(APPEND ${translations_qrc} "  <file alias=\"${qm_name}\">${qm}</file>\n")
endforeach()
file(APPEND ${translations_qrc} "</qresource></RCC>\n")
qt_add_lupdate(ferrule_window TS_FILES ${translation_files})
target_sources(ferrule_window PRIVATE ${translations_qrc})

add_executable(ferrule main.cpp)
target_link_libraries(ferrule PRIVATE Ferrule::window)
target_compile_definitions(ferrule PRIVATE FERRULE_VERSION="${PROJECT_VERSION}")
