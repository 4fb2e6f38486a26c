// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/schema.h"

#include <array>

#include "core/record/record.h"

namespace ferrule {

namespace {

// Units are in the names. *_ms is UTC in milliseconds, film times are seconds from the film's first image. uid is
// random and unique over all machines, so that records can be merged; films, rigs and lenses are known by their
// content. Balls and pockets are stored as the words of the files.
constexpr const char* kVersion1[] = {
    R"(CREATE TABLE players(
      id INTEGER PRIMARY KEY,
      uid TEXT NOT NULL UNIQUE,
      name TEXT NOT NULL UNIQUE,
      handedness TEXT NOT NULL CHECK(handedness IN ('unknown', 'right', 'left', 'both')),
      remark TEXT
    ) STRICT)",
    R"(CREATE TABLE tables(
      id INTEGER PRIMARY KEY,
      uid TEXT NOT NULL UNIQUE,
      name TEXT NOT NULL,
      measured TEXT NOT NULL,
      UNIQUE(name, measured)
    ) STRICT)",
    R"(CREATE TABLE lenses(
      id INTEGER PRIMARY KEY,
      sha256 TEXT NOT NULL UNIQUE,
      camera TEXT NOT NULL,
      content TEXT NOT NULL
    ) STRICT)",
    R"(CREATE TABLE rigs(
      id INTEGER PRIMARY KEY,
      sha256 TEXT NOT NULL UNIQUE,
      lens_id INTEGER NOT NULL REFERENCES lenses(id),
      content TEXT NOT NULL,
      chain TEXT NOT NULL,
      pose_rms_px REAL NOT NULL,
      tag_rms_mm REAL NOT NULL,
      verdict TEXT NOT NULL
    ) STRICT)",
    R"(CREATE TABLE films(
      id INTEGER PRIMARY KEY,
      sha256 TEXT NOT NULL UNIQUE,
      path TEXT NOT NULL,
      width_px INTEGER NOT NULL,
      height_px INTEGER NOT NULL,
      images INTEGER NOT NULL,
      duration_s REAL NOT NULL,
      first_image_ms INTEGER
    ) STRICT)",
    R"(CREATE TABLE sessions(
      id INTEGER PRIMARY KEY,
      uid TEXT NOT NULL UNIQUE,
      name TEXT NOT NULL,
      started_ms INTEGER NOT NULL,
      table_id INTEGER NOT NULL REFERENCES tables(id)
    ) STRICT)",
    "CREATE INDEX sessions_by_start ON sessions(started_ms, id)",
    R"(CREATE TABLE session_players(
      session_id INTEGER NOT NULL REFERENCES sessions(id) ON DELETE CASCADE,
      seat INTEGER NOT NULL,
      player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE,
      PRIMARY KEY(session_id, seat),
      UNIQUE(session_id, player_id)
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX session_players_by_player ON session_players(player_id)",
    R"(CREATE TABLE frames(
      id INTEGER PRIMARY KEY,
      uid TEXT NOT NULL UNIQUE,
      session_id INTEGER NOT NULL REFERENCES sessions(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      game TEXT NOT NULL,
      film_id INTEGER REFERENCES films(id),
      rig_id INTEGER REFERENCES rigs(id),
      complete INTEGER NOT NULL CHECK(complete IN (0, 1)),
      UNIQUE(session_id, number)
    ) STRICT)",
    "CREATE INDEX frames_by_film ON frames(film_id)",
    R"(CREATE TABLE shots(
      id INTEGER PRIMARY KEY,
      frame_id INTEGER NOT NULL REFERENCES frames(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      player_id INTEGER REFERENCES players(id) ON DELETE CASCADE,
      strike_s REAL NOT NULL,
      rest_s REAL NOT NULL,
      strike_ms INTEGER,
      outcome TEXT NOT NULL CHECK(outcome IN ('pot', 'miss', 'safety', 'scratch', 'foul', 'break')),
      first_contact TEXT,
      scratch INTEGER NOT NULL CHECK(scratch IN (0, 1)),
      target_ball TEXT,
      target_pocket TEXT,
      target_cut_rad REAL,
      target_line_error_rad REAL,
      target_miss_side TEXT CHECK(target_miss_side IN ('over', 'under')),
      UNIQUE(frame_id, number)
    ) STRICT)",
    "CREATE INDEX shots_by_player ON shots(player_id, strike_ms)",
    R"(CREATE TABLE positions(
      shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
      ball TEXT NOT NULL,
      before_x_m REAL,
      before_y_m REAL,
      after_x_m REAL,
      after_y_m REAL,
      PRIMARY KEY(shot_id, ball),
      CHECK((before_x_m IS NULL) = (before_y_m IS NULL)),
      CHECK((after_x_m IS NULL) = (after_y_m IS NULL))
    ) STRICT, WITHOUT ROWID)",
    // Each value is there with its standard uncertainty, or absent with the reason.
    R"(CREATE TABLE deliveries(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      aim_rad REAL, aim_u_rad REAL, aim_reason TEXT,
      speed_mps REAL, speed_u_mps REAL, speed_reason TEXT,
      side REAL, side_u REAL, side_reason TEXT,
      height REAL, height_u REAL, height_reason TEXT,
      elevation_rad REAL, elevation_u_rad REAL, elevation_reason TEXT,
      CHECK((aim_rad IS NULL) = (aim_u_rad IS NULL) AND (aim_rad IS NULL) = (aim_reason IS NOT NULL)),
      CHECK((speed_mps IS NULL) = (speed_u_mps IS NULL) AND (speed_mps IS NULL) = (speed_reason IS NOT NULL)),
      CHECK((side IS NULL) = (side_u IS NULL) AND (side IS NULL) = (side_reason IS NOT NULL)),
      CHECK((height IS NULL) = (height_u IS NULL) AND (height IS NULL) = (height_reason IS NOT NULL)),
      CHECK((elevation_rad IS NULL) = (elevation_u_rad IS NULL)
        AND (elevation_rad IS NULL) = (elevation_reason IS NOT NULL))
    ) STRICT)",
    R"(CREATE TABLE events(
      shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      time_s REAL NOT NULL,
      kind TEXT NOT NULL CHECK(kind IN ('ball', 'cushion', 'pocket', 'off-table')),
      ball TEXT NOT NULL,
      other TEXT,
      cushion TEXT,
      pocket TEXT,
      x_m REAL NOT NULL,
      y_m REAL NOT NULL,
      PRIMARY KEY(shot_id, number)
    ) STRICT, WITHOUT ROWID)",
    R"(CREATE TABLE pocketed(
      shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      ball TEXT NOT NULL,
      pocket TEXT NOT NULL,
      PRIMARY KEY(shot_id, number)
    ) STRICT, WITHOUT ROWID)",
    // packed: track_blob.h
    R"(CREATE TABLE tracks(
      id INTEGER PRIMARY KEY,
      shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
      ball TEXT NOT NULL,
      packed BLOB NOT NULL,
      UNIQUE(shot_id, ball)
    ) STRICT)",
    R"(CREATE TABLE placements(
      id INTEGER PRIMARY KEY,
      frame_id INTEGER NOT NULL REFERENCES frames(id) ON DELETE CASCADE,
      ball TEXT NOT NULL,
      time_s REAL NOT NULL,
      x_m REAL NOT NULL,
      y_m REAL NOT NULL
    ) STRICT)",
    "CREATE INDEX placements_by_frame ON placements(frame_id, id)",
};

// Consent, how sure a reading is, what people correct and write. A player's remark becomes a note.
constexpr const char* kVersion2[] = {
    "ALTER TABLE players ADD COLUMN minor INTEGER NOT NULL DEFAULT 0 CHECK(minor IN (0, 1))",
    "ALTER TABLE players ADD COLUMN consent_given_ms INTEGER",
    "ALTER TABLE players ADD COLUMN consent_by TEXT NOT NULL DEFAULT ''",
    // Nobody wrote down how sure the older outcomes were, so a person is asked.
    "ALTER TABLE shots ADD COLUMN verdict TEXT NOT NULL DEFAULT 'ask' CHECK(verdict IN ('certain', 'proposed', 'ask'))",
    // cause_id: a value that fell because another one was corrected (the cut angle of a target that was not the
    // target).
    R"(CREATE TABLE corrections(
      id INTEGER PRIMARY KEY,
      entity TEXT NOT NULL,
      entity_id INTEGER NOT NULL,
      field TEXT NOT NULL,
      measured TEXT,
      corrected TEXT,
      who TEXT NOT NULL,
      when_ms INTEGER NOT NULL,
      cause_id INTEGER REFERENCES corrections(id) ON DELETE CASCADE
    ) STRICT)",
    "CREATE INDEX corrections_by_cause ON corrections(cause_id)",
    "CREATE INDEX corrections_by_entity ON corrections(entity, entity_id, id)",
    R"(CREATE TABLE notes(
      id INTEGER PRIMARY KEY,
      entity TEXT NOT NULL,
      entity_id INTEGER NOT NULL,
      note TEXT NOT NULL,
      who TEXT NOT NULL,
      when_ms INTEGER NOT NULL
    ) STRICT)",
    "CREATE INDEX notes_by_entity ON notes(entity, entity_id, id)",
    R"(CREATE TABLE tags(
      entity TEXT NOT NULL,
      entity_id INTEGER NOT NULL,
      tag TEXT NOT NULL,
      PRIMARY KEY(entity, entity_id, tag)
    ) STRICT, WITHOUT ROWID)",
    R"(INSERT INTO notes(entity, entity_id, note, who, when_ms)
       SELECT 'player', id, remark, '', 0 FROM players WHERE remark IS NOT NULL AND remark <> '' ORDER BY id)",
    "ALTER TABLE players DROP COLUMN remark",
    // corrections, notes and tags point at rows of several tables, so what foreign keys do elsewhere is done here.
    R"(CREATE TRIGGER shot_removed AFTER DELETE ON shots BEGIN
      DELETE FROM corrections WHERE entity = 'shot' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'shot' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'shot' AND entity_id = OLD.id;
    END)",
    R"(CREATE TRIGGER player_removed AFTER DELETE ON players BEGIN
      DELETE FROM corrections WHERE entity = 'player' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'player' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'player' AND entity_id = OLD.id;
    END)",
};

// The referee's ruling beside its shot; content: core/rules/ruling_text.h. fouls: their words, a space between.
constexpr const char* kVersion3[] = {
    R"(CREATE TABLE rulings(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      sureness TEXT NOT NULL CHECK(sureness IN ('certain', 'proposed', 'ask')),
      fouls TEXT NOT NULL,
      content TEXT NOT NULL
    ) STRICT)",
};

// What a session was for; what was found out about a table, and about a shot once it was read. The contents are JSON of
// the parts that wrote them: physics/fingerprint.h, and DEVELOPERS.md for the other two.
constexpr const char* kVersion4[] = {
    "ALTER TABLE sessions ADD COLUMN kind TEXT NOT NULL DEFAULT 'unknown' "
    "CHECK(kind IN ('unknown', 'practice', 'match', 'lesson'))",
    R"(CREATE TABLE fingerprints(
      session_id INTEGER PRIMARY KEY REFERENCES sessions(id) ON DELETE CASCADE,
      table_id INTEGER NOT NULL REFERENCES tables(id),
      fitted_ms INTEGER NOT NULL,
      shots INTEGER NOT NULL,
      content TEXT NOT NULL
    ) STRICT)",
    "CREATE INDEX fingerprints_by_table ON fingerprints(table_id, session_id)",
    // The losses are chances of winning the frame, or points in straight pool; absent where nothing was suggested that
    // could be compared.
    R"(CREATE TABLE suggestions(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      planner TEXT NOT NULL,
      shown INTEGER NOT NULL CHECK(shown IN (0, 1)),
      choice_loss REAL,
      delivery_loss REAL,
      content TEXT NOT NULL
    ) STRICT)",
    R"(CREATE TABLE explanations(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      content TEXT NOT NULL
    ) STRICT)",
    // What is under way and not a shot yet, so that it survives the program.
    R"(CREATE TABLE drafts(
      kind TEXT PRIMARY KEY,
      content TEXT NOT NULL
    ) STRICT, WITHOUT ROWID)",
};

// People: guests, groups, and what each consented to. Consents are a ledger: an entry is added, never changed, and goes
// with its person only; what was noted by mistake is struck out by another entry. The consent that players had until
// now was for filming and keeping. joined_players: other uids by which a person is known, since two turned out to be
// one. erased_players: a merge does not bring them back.
constexpr const char* kVersion5[] = {
    "ALTER TABLE players ADD COLUMN guest INTEGER NOT NULL DEFAULT 0 CHECK(guest IN (0, 1))",
    R"(CREATE TABLE player_groups(
      player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE,
      name TEXT NOT NULL,
      PRIMARY KEY(player_id, name)
    ) STRICT, WITHOUT ROWID)",
    R"(CREATE TABLE joined_players(
      uid TEXT PRIMARY KEY,
      player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE
    ) STRICT, WITHOUT ROWID)",
    "CREATE INDEX joined_players_by_player ON joined_players(player_id)",
    R"(CREATE TABLE erased_players(
      uid TEXT PRIMARY KEY,
      erased_ms INTEGER NOT NULL
    ) STRICT, WITHOUT ROWID)",
    R"(CREATE TABLE consents(
      id INTEGER PRIMARY KEY,
      uid TEXT NOT NULL UNIQUE,
      player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE,
      event TEXT NOT NULL CHECK(event IN ('given', 'withdrawn', 'struck')),
      scope TEXT NOT NULL CHECK(scope IN ('measuring', 'film', 'film-of-minor', 'sharing')),
      struck_uid TEXT,
      from_ms INTEGER NOT NULL,
      until_ms INTEGER,
      by_whom TEXT NOT NULL,
      guardian INTEGER NOT NULL CHECK(guardian IN (0, 1)),
      noted_by TEXT NOT NULL,
      noted_ms INTEGER NOT NULL,
      CHECK((event = 'struck') = (struck_uid IS NOT NULL))
    ) STRICT)",
    "CREATE INDEX consents_by_player ON consents(player_id, from_ms)",
    R"(INSERT INTO consents(uid, player_id, event, scope, from_ms, by_whom, guardian, noted_by, noted_ms)
       SELECT uid || '-measuring', id, 'given', 'measuring', consent_given_ms, consent_by, minor, '', consent_given_ms
       FROM players WHERE consent_given_ms IS NOT NULL ORDER BY id)",
    R"(INSERT INTO consents(uid, player_id, event, scope, from_ms, by_whom, guardian, noted_by, noted_ms)
       SELECT uid || '-film', id, 'given', CASE minor WHEN 0 THEN 'film' ELSE 'film-of-minor' END, consent_given_ms,
         consent_by, minor, '', consent_given_ms
       FROM players WHERE consent_given_ms IS NOT NULL ORDER BY id)",
    // A name without a date is no consent, and is not lost either.
    R"(INSERT INTO notes(entity, entity_id, note, who, when_ms)
       SELECT 'player', id, 'consent_by: ' || consent_by, '', 0 FROM players
       WHERE consent_given_ms IS NULL AND consent_by <> '' ORDER BY id)",
    "ALTER TABLE players DROP COLUMN consent_given_ms",
    "ALTER TABLE players DROP COLUMN consent_by",
    R"(CREATE TRIGGER consent_changed BEFORE UPDATE ON consents BEGIN
      SELECT RAISE(ABORT, 'consents are added, never changed');
    END)",
    // Removed with its person: then the person is gone already.
    R"(CREATE TRIGGER consent_removed BEFORE DELETE ON consents
      WHEN EXISTS(SELECT 1 FROM players WHERE id = OLD.player_id) BEGIN
      SELECT RAISE(ABORT, 'consents are struck out, never removed');
    END)",
    R"(CREATE TRIGGER session_removed AFTER DELETE ON sessions BEGIN
      DELETE FROM corrections WHERE entity = 'session' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'session' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'session' AND entity_id = OLD.id;
    END)",
    R"(CREATE TRIGGER frame_removed AFTER DELETE ON frames BEGIN
      DELETE FROM corrections WHERE entity = 'frame' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'frame' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'frame' AND entity_id = OLD.id;
    END)",
};

// A person's own drills, and the runs of all drills. A run carries the drill as it was: deleting or changing a drill
// leaves its runs as they are. content and drill: core/drills/drill_file.h; places in metres on the run's table.
constexpr const char* kVersion6[] = {
    R"(CREATE TABLE drills(
      id INTEGER PRIMARY KEY,
      drill_key TEXT NOT NULL UNIQUE,
      content TEXT NOT NULL,
      changed_ms INTEGER NOT NULL
    ) STRICT)",
    R"(CREATE TABLE drill_runs(
      id INTEGER PRIMARY KEY,
      uid TEXT NOT NULL UNIQUE,
      drill_key TEXT NOT NULL,
      drill TEXT NOT NULL,
      mirrored TEXT NOT NULL CHECK(mirrored IN ('', 'sides', 'ends', 'both')),
      table_id INTEGER NOT NULL REFERENCES tables(id),
      player_id INTEGER REFERENCES players(id) ON DELETE CASCADE,
      session_id INTEGER REFERENCES sessions(id) ON DELETE CASCADE,
      started_ms INTEGER NOT NULL,
      ended_ms INTEGER,
      source TEXT NOT NULL CHECK(source IN ('hand', 'film', 'live'))
    ) STRICT)",
    "CREATE INDEX drill_runs_by_drill ON drill_runs(drill_key, started_ms)",
    "CREATE INDEX drill_runs_by_player ON drill_runs(player_id)",
    "CREATE INDEX drill_runs_by_session ON drill_runs(session_id)",
    R"(CREATE TABLE trials(
      id INTEGER PRIMARY KEY,
      run_id INTEGER NOT NULL REFERENCES drill_runs(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      station INTEGER NOT NULL,
      leave_x_m REAL,
      leave_y_m REAL,
      miss_side TEXT CHECK(miss_side IN ('over', 'under')),
      set_up_error_m REAL,
      shot_id INTEGER REFERENCES shots(id) ON DELETE SET NULL,
      UNIQUE(run_id, number),
      CHECK((leave_x_m IS NULL) = (leave_y_m IS NULL))
    ) STRICT)",
    "CREATE INDEX trials_by_shot ON trials(shot_id)",
    // met is absent where neither film nor person said.
    R"(CREATE TABLE trial_goals(
      trial_id INTEGER NOT NULL REFERENCES trials(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      met INTEGER CHECK(met IN (0, 1)),
      figure REAL,
      PRIMARY KEY(trial_id, number)
    ) STRICT, WITHOUT ROWID)",
};

constexpr const char* kSuggestionFigures = R"(UPDATE suggestions SET
      pot_chance = CAST(json_extract(content, '$.review.taken.pot_chance') AS REAL),
      leave_x_m = CAST(json_extract(content, '$.review.taken.leave_x_mm') AS REAL) / 1000.0,
      leave_y_m = CAST(json_extract(content, '$.review.taken.leave_y_mm') AS REAL) / 1000.0,
      next_ball = CAST(json_extract(content, '$.review.taken.next_ball') AS TEXT),
      asked_speed_mps = CASE WHEN shown AND json_extract(content, '$.review.taken.rank') = 1
        THEN CAST(json_extract(content, '$.review.suggested.speed_m_s') AS REAL) END,
      asked_side = CASE WHEN shown AND json_extract(content, '$.review.taken.rank') = 1
        THEN CAST(json_extract(content, '$.review.suggested.side') AS REAL) END,
      asked_height = CASE WHEN shown AND json_extract(content, '$.review.taken.rank') = 1
        THEN CAST(json_extract(content, '$.review.suggested.height') AS REAL) END,
      direct_chance = CASE WHEN json_type(content, '$.plans') = 'array' THEN (
        SELECT max(coalesce(max(CAST(json_extract(value, '$.pot_chance') AS REAL)), 0.0),
          coalesce(CAST(json_extract(content, '$.direct_chance') AS REAL), 0.0))
        FROM json_each(content, '$.plans') WHERE json_extract(value, '$.kind') = 'direct') END
      WHERE json_valid(content))";

// Figures out of the suggestions, so that a chart does not read them all.
constexpr const char* kVersion7[] = {
    "ALTER TABLE suggestions ADD COLUMN pot_chance REAL",
    "ALTER TABLE suggestions ADD COLUMN leave_x_m REAL",
    "ALTER TABLE suggestions ADD COLUMN leave_y_m REAL",
    "ALTER TABLE suggestions ADD COLUMN next_ball TEXT",
    "ALTER TABLE suggestions ADD COLUMN asked_speed_mps REAL",
    "ALTER TABLE suggestions ADD COLUMN asked_side REAL",
    "ALTER TABLE suggestions ADD COLUMN asked_height REAL",
    "ALTER TABLE suggestions ADD COLUMN direct_chance REAL",
    kSuggestionFigures,
};

constexpr std::array kMigrations{
    Migration{1, kVersion1}, Migration{2, kVersion2}, Migration{3, kVersion3}, Migration{4, kVersion4},
    Migration{5, kVersion5}, Migration{6, kVersion6}, Migration{7, kVersion7},
};
static_assert(kMigrations.back().version == kRecordVersion);

}  // namespace

std::span<const Migration> migrations() {
  return kMigrations;
}

const char* suggestionFigures() {
  return kSuggestionFigures;
}

}  // namespace ferrule
