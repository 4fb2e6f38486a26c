-- A record as version 6 wrote it. Kept for good; never made again from a later schema.
PRAGMA application_id = 1181905516;
PRAGMA user_version = 6;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE corrections(
      id INTEGER PRIMARY KEY,
      entity TEXT NOT NULL,
      entity_id INTEGER NOT NULL,
      field TEXT NOT NULL,
      measured TEXT,
      corrected TEXT,
      who TEXT NOT NULL,
      when_ms INTEGER NOT NULL,
      cause_id INTEGER REFERENCES corrections(id) ON DELETE CASCADE
    ) STRICT;
INSERT INTO corrections VALUES(1,'shot',1,'outcome','pot','miss','Cleo',1760000100000,NULL);
CREATE TABLE deliveries(
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
) STRICT;
INSERT INTO deliveries VALUES(1,0.050000000000000002775,0.0010000000000000000208,NULL,2.25,0.020000000000000000416,NULL,NULL,NULL,'not observable',NULL,NULL,'not observable',NULL,NULL,'not observable');
CREATE TABLE events(
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
) STRICT, WITHOUT ROWID;
INSERT INTO events VALUES(1,1,1.3999999999999999111,'ball','cue','3',NULL,NULL,0.34999999999999997779,0.10000000000000000555);
INSERT INTO events VALUES(1,2,1.8999999999999999111,'pocket','3',NULL,NULL,'foot-left',1.1000000000000000888,0.5);
CREATE TABLE films(
  id INTEGER PRIMARY KEY,
  sha256 TEXT NOT NULL UNIQUE,
  path TEXT NOT NULL,
  width_px INTEGER NOT NULL,
  height_px INTEGER NOT NULL,
  images INTEGER NOT NULL,
  duration_s REAL NOT NULL,
  first_image_ms INTEGER
) STRICT;
INSERT INTO films VALUES(1,'cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc','films/tuesday.mp4',1280,720,600,10.0,1760000000000);
CREATE TABLE frames(
  id INTEGER PRIMARY KEY,
  uid TEXT NOT NULL UNIQUE,
  session_id INTEGER NOT NULL REFERENCES sessions(id) ON DELETE CASCADE,
  number INTEGER NOT NULL,
  game TEXT NOT NULL,
  film_id INTEGER REFERENCES films(id),
  rig_id INTEGER REFERENCES rigs(id),
  complete INTEGER NOT NULL CHECK(complete IN (0, 1)),
  UNIQUE(session_id, number)
) STRICT;
INSERT INTO frames VALUES(1,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0005',1,1,'eight-ball',1,NULL,1);
CREATE TABLE lenses(
  id INTEGER PRIMARY KEY,
  sha256 TEXT NOT NULL UNIQUE,
  camera TEXT NOT NULL,
  content TEXT NOT NULL
) STRICT;
CREATE TABLE notes(
      id INTEGER PRIMARY KEY,
      entity TEXT NOT NULL,
      entity_id INTEGER NOT NULL,
      note TEXT NOT NULL,
      who TEXT NOT NULL,
      when_ms INTEGER NOT NULL
    ) STRICT;
INSERT INTO notes VALUES(1,'player',1,'drops the elbow','',0);
INSERT INTO notes VALUES(2,'player',3,'consent_by: her brother, by word','',0);
CREATE TABLE placements(
  id INTEGER PRIMARY KEY,
  frame_id INTEGER NOT NULL REFERENCES frames(id) ON DELETE CASCADE,
  ball TEXT NOT NULL,
  time_s REAL NOT NULL,
  x_m REAL NOT NULL,
  y_m REAL NOT NULL
) STRICT;
CREATE TABLE players(
  id INTEGER PRIMARY KEY,
  uid TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL UNIQUE,
  handedness TEXT NOT NULL CHECK(handedness IN ('unknown', 'right', 'left', 'both')),
  minor INTEGER NOT NULL DEFAULT 0 CHECK(minor IN (0, 1)), guest INTEGER NOT NULL DEFAULT 0 CHECK(guest IN (0, 1))) STRICT;
INSERT INTO players VALUES(1,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0001','Ada','left',0,0);
INSERT INTO players VALUES(2,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0002','Ben','right',1,0);
INSERT INTO players VALUES(3,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0005','Cleo','unknown',0,0);
INSERT INTO players VALUES(4,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0006','Dora','both',0,0);
CREATE TABLE pocketed(
  shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
  number INTEGER NOT NULL,
  ball TEXT NOT NULL,
  pocket TEXT NOT NULL,
  PRIMARY KEY(shot_id, number)
) STRICT, WITHOUT ROWID;
INSERT INTO pocketed VALUES(1,1,'3','foot-left');
CREATE TABLE positions(
  shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
  ball TEXT NOT NULL,
  before_x_m REAL,
  before_y_m REAL,
  after_x_m REAL,
  after_y_m REAL,
  PRIMARY KEY(shot_id, ball),
  CHECK((before_x_m IS NULL) = (before_y_m IS NULL)),
  CHECK((after_x_m IS NULL) = (after_y_m IS NULL))
) STRICT, WITHOUT ROWID;
INSERT INTO positions VALUES(1,'3',0.4000000000000000222,0.10000000000000000555,NULL,NULL);
INSERT INTO positions VALUES(1,'5',-0.2000000000000000111,-0.29999999999999998889,-0.2000000000000000111,-0.29999999999999998889);
INSERT INTO positions VALUES(1,'cue',-0.5,0.10000000000000000555,0.29999999999999998889,0.2000000000000000111);
CREATE TABLE rigs(
  id INTEGER PRIMARY KEY,
  sha256 TEXT NOT NULL UNIQUE,
  lens_id INTEGER NOT NULL REFERENCES lenses(id),
  content TEXT NOT NULL,
  chain TEXT NOT NULL,
  pose_rms_px REAL NOT NULL,
  tag_rms_mm REAL NOT NULL,
  verdict TEXT NOT NULL
) STRICT;
CREATE TABLE session_players(
  session_id INTEGER NOT NULL REFERENCES sessions(id) ON DELETE CASCADE,
  seat INTEGER NOT NULL,
  player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE,
  PRIMARY KEY(session_id, seat),
  UNIQUE(session_id, player_id)
) STRICT, WITHOUT ROWID;
INSERT INTO session_players VALUES(1,1,1);
INSERT INTO session_players VALUES(1,2,2);
CREATE TABLE sessions(
  id INTEGER PRIMARY KEY,
  uid TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  started_ms INTEGER NOT NULL,
  table_id INTEGER NOT NULL REFERENCES tables(id)
, kind TEXT NOT NULL DEFAULT 'unknown' CHECK(kind IN ('unknown', 'practice', 'match', 'lesson'))) STRICT;
INSERT INTO sessions VALUES(1,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0004','Tuesday practice',1760000000000,1,'lesson');
CREATE TABLE shots(
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
  target_miss_side TEXT CHECK(target_miss_side IN ('over', 'under')), verdict TEXT NOT NULL DEFAULT 'ask' CHECK(verdict IN ('certain', 'proposed', 'ask')),
  UNIQUE(frame_id, number)
) STRICT;
INSERT INTO shots VALUES(1,1,1,1,1.0,4.0,1760000001000,'miss','3',0,'3','foot-left',0.25,0.0040000000000000000832,'over','certain');
CREATE TABLE rulings(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      sureness TEXT NOT NULL CHECK(sureness IN ('certain', 'proposed', 'ask')),
      fouls TEXT NOT NULL,
      content TEXT NOT NULL
    ) STRICT;
INSERT INTO rulings VALUES(1,'proposed','no-rail','{"sureness": "proposed", "fouls": ["no-rail"]}');
CREATE TABLE tables(
  id INTEGER PRIMARY KEY,
  uid TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  measured TEXT NOT NULL,
  UNIQUE(name, measured)
) STRICT;
INSERT INTO tables VALUES(1,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0003','club table 2','{"units": "mm", "table_length_nose_to_nose": 2235, "table_width_nose_to_nose": 1118, "ball_diameter": 57.15}');
CREATE TABLE tags(
      entity TEXT NOT NULL,
      entity_id INTEGER NOT NULL,
      tag TEXT NOT NULL,
      PRIMARY KEY(entity, entity_id, tag)
    ) STRICT, WITHOUT ROWID;
INSERT INTO tags VALUES('shot',1,'thin');
CREATE TABLE tracks(
  id INTEGER PRIMARY KEY,
  shot_id INTEGER NOT NULL REFERENCES shots(id) ON DELETE CASCADE,
  ball TEXT NOT NULL,
  packed BLOB NOT NULL,
  UNIQUE(shot_id, ball)
) STRICT;
INSERT INTO tracks VALUES(1,1,'cue',X'0100000011789c636ae8ac3ad952719cf1451f1b036300031300407e05e2');
CREATE TABLE fingerprints(
      session_id INTEGER PRIMARY KEY REFERENCES sessions(id) ON DELETE CASCADE,
      table_id INTEGER NOT NULL REFERENCES tables(id),
      fitted_ms INTEGER NOT NULL,
      shots INTEGER NOT NULL,
      content TEXT NOT NULL
    ) STRICT;
INSERT INTO fingerprints VALUES(1,1,1760000200000,1,'{}');
CREATE TABLE suggestions(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      planner TEXT NOT NULL,
      shown INTEGER NOT NULL CHECK(shown IN (0, 1)),
      choice_loss REAL,
      delivery_loss REAL,
      content TEXT NOT NULL
    ) STRICT;
INSERT INTO suggestions VALUES(1,'planner 2',1,0.050000000000000002775,0.10000000000000000555,'{"format": "ferrule-suggested/1", "planner": 2, "simulations": 20000, "settled": true, "scatter": {"aim_deg": 0.2, "speed": 0.05, "side": 0.05, "height": 0.05, "elevation_deg": 0.5}, "plans": [{"rank": 1, "ball": "3", "pocket": "foot-left", "kind": "direct", "first": "3", "cushions": [], "aim_deg": 0.0, "speed_m_s": 2.0, "side": 0.1, "height": -0.2, "elevation_deg": 0.0, "cue_x_mm": null, "cue_y_mm": null, "pot_chance": 0.62, "pot_chance_u": 0.02, "foul_chance": 0.01, "scratch_chance": 0.01, "keeps_chance": 0.6, "value": 0.55, "value_u": 0.01, "leave_x_mm": 250.0, "leave_y_mm": 180.0, "leave_along_mm": 40.0, "leave_across_mm": 20.0, "leave_deg": 0.0, "next_ball": "5", "next_open": 0.8, "opponent_open": 0.3, "why": ""}, {"rank": 2, "ball": "5", "pocket": "head-left", "kind": "bank", "first": "3", "cushions": [], "aim_deg": 0.0, "speed_m_s": 2.0, "side": 0.1, "height": -0.2, "elevation_deg": 0.0, "cue_x_mm": null, "cue_y_mm": null, "pot_chance": 0.7, "pot_chance_u": 0.02, "foul_chance": 0.01, "scratch_chance": 0.01, "keeps_chance": 0.6, "value": 0.55, "value_u": 0.01, "leave_x_mm": 250.0, "leave_y_mm": 180.0, "leave_along_mm": 40.0, "leave_across_mm": 20.0, "leave_deg": 0.0, "next_ball": "5", "next_open": 0.8, "opponent_open": 0.3, "why": ""}], "review": {"suggested": {"rank": 1, "ball": "3", "pocket": "foot-left", "kind": "direct", "first": "3", "cushions": [], "aim_deg": 0.0, "speed_m_s": 2.0, "side": 0.1, "height": -0.2, "elevation_deg": 0.0, "cue_x_mm": null, "cue_y_mm": null, "pot_chance": 0.62, "pot_chance_u": 0.02, "foul_chance": 0.01, "scratch_chance": 0.01, "keeps_chance": 0.6, "value": 0.55, "value_u": 0.01, "leave_x_mm": 250.0, "leave_y_mm": 180.0, "leave_along_mm": 40.0, "leave_across_mm": 20.0, "leave_deg": 0.0, "next_ball": "5", "next_open": 0.8, "opponent_open": 0.3, "why": ""}, "taken": {"rank": 1, "ball": "3", "pocket": "foot-left", "kind": "direct", "first": "3", "cushions": [], "aim_deg": 0.0, "speed_m_s": 2.25, "side": 0.1, "height": -0.2, "elevation_deg": 0.0, "cue_x_mm": null, "cue_y_mm": null, "pot_chance": 0.58, "pot_chance_u": 0.02, "foul_chance": 0.01, "scratch_chance": 0.01, "keeps_chance": 0.6, "value": 0.55, "value_u": 0.01, "leave_x_mm": 270.0, "leave_y_mm": 190.5, "leave_along_mm": 40.0, "leave_across_mm": 20.0, "leave_deg": 0.0, "next_ball": "5", "next_open": 0.8, "opponent_open": 0.3, "why": ""}, "came_out_value": 0.4, "choice_loss": 0.05, "choice_loss_u": 0.01, "delivery_loss": 0.1, "tie": false}}');
CREATE TABLE explanations(
      shot_id INTEGER PRIMARY KEY REFERENCES shots(id) ON DELETE CASCADE,
      content TEXT NOT NULL
    ) STRICT;
INSERT INTO explanations VALUES(1,'{}');
CREATE TABLE drafts(
      kind TEXT PRIMARY KEY,
      content TEXT NOT NULL
    ) STRICT, WITHOUT ROWID;
INSERT INTO drafts VALUES('hand-session','{"session": 1}');
CREATE TABLE player_groups(
      player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE,
      name TEXT NOT NULL,
      PRIMARY KEY(player_id, name)
    ) STRICT, WITHOUT ROWID;
INSERT INTO player_groups VALUES(1,'Tuesday');
CREATE TABLE joined_players(
      uid TEXT PRIMARY KEY,
      player_id INTEGER NOT NULL REFERENCES players(id) ON DELETE CASCADE
    ) STRICT, WITHOUT ROWID;
CREATE TABLE erased_players(
      uid TEXT PRIMARY KEY,
      erased_ms INTEGER NOT NULL
    ) STRICT, WITHOUT ROWID;
CREATE TABLE consents(
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
    ) STRICT;
INSERT INTO consents VALUES(1,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0002-measuring',2,'given','measuring',NULL,1760000000000,NULL,'a guardian',1,'',1760000000000);
INSERT INTO consents VALUES(2,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0006-measuring',4,'given','measuring',NULL,1770000000000,NULL,'Dora',0,'',1770000000000);
INSERT INTO consents VALUES(3,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0002-film',2,'given','film-of-minor',NULL,1760000000000,NULL,'a guardian',1,'',1760000000000);
INSERT INTO consents VALUES(4,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0006-film',4,'given','film',NULL,1770000000000,NULL,'Dora',0,'',1770000000000);
CREATE TABLE drills(
      id INTEGER PRIMARY KEY,
      drill_key TEXT NOT NULL UNIQUE,
      content TEXT NOT NULL,
      changed_ms INTEGER NOT NULL
    ) STRICT;
INSERT INTO drills VALUES(1,'zone-and-speed','{"format": "ferrule-drills/1", "drills": [{"key": "zone-and-speed", "title": "Zone and speed", "stations": [{"balls": [{"ball": "1", "place": [1.5, 0.75]}], "cue_ball": {"place": [1.0, 0.75]}, "goals": [{"kind": "pot", "ball": "1", "pocket": "foot-left"}, {"kind": "rest", "zone": {"corners": [[1.4, 0.25]], "reach": 0.15}}], "trials": 10, "asked": {"speed_m_s": 2.0}}]}]}',1770000000000);
CREATE TABLE drill_runs(
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
    ) STRICT;
INSERT INTO drill_runs VALUES(1,'5d0c6e1e-6f43-4a3e-9a63-0f5b6f0a0007','zone-and-speed','{"format": "ferrule-drills/1", "drills": [{"key": "zone-and-speed", "title": "Zone and speed", "stations": [{"balls": [{"ball": "1", "place": [1.5, 0.75]}], "cue_ball": {"place": [1.0, 0.75]}, "goals": [{"kind": "pot", "ball": "1", "pocket": "foot-left"}, {"kind": "rest", "zone": {"corners": [[1.4, 0.25]], "reach": 0.15}}], "trials": 10, "asked": {"speed_m_s": 2.0}}]}]}','',1,1,1,1760000000000,1760000600000,'film');
CREATE TABLE trials(
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
    ) STRICT;
INSERT INTO trials VALUES(1,1,1,0,0.29999999999999998889,0.2000000000000000111,NULL,0.0040000000000000000832,1);
CREATE TABLE trial_goals(
      trial_id INTEGER NOT NULL REFERENCES trials(id) ON DELETE CASCADE,
      number INTEGER NOT NULL,
      met INTEGER CHECK(met IN (0, 1)),
      figure REAL,
      PRIMARY KEY(trial_id, number)
    ) STRICT, WITHOUT ROWID;
INSERT INTO trial_goals VALUES(1,1,0,NULL);
INSERT INTO trial_goals VALUES(1,2,1,0.0);
CREATE INDEX sessions_by_start ON sessions(started_ms, id);
CREATE INDEX session_players_by_player ON session_players(player_id);
CREATE INDEX frames_by_film ON frames(film_id);
CREATE INDEX shots_by_player ON shots(player_id, strike_ms);
CREATE INDEX placements_by_frame ON placements(frame_id, id);
CREATE INDEX corrections_by_cause ON corrections(cause_id);
CREATE INDEX corrections_by_entity ON corrections(entity, entity_id, id);
CREATE INDEX notes_by_entity ON notes(entity, entity_id, id);
CREATE INDEX fingerprints_by_table ON fingerprints(table_id, session_id);
CREATE INDEX joined_players_by_player ON joined_players(player_id);
CREATE INDEX consents_by_player ON consents(player_id, from_ms);
CREATE INDEX drill_runs_by_drill ON drill_runs(drill_key, started_ms);
CREATE INDEX drill_runs_by_player ON drill_runs(player_id);
CREATE INDEX drill_runs_by_session ON drill_runs(session_id);
CREATE INDEX trials_by_shot ON trials(shot_id);
CREATE TRIGGER shot_removed AFTER DELETE ON shots BEGIN
      DELETE FROM corrections WHERE entity = 'shot' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'shot' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'shot' AND entity_id = OLD.id;
    END;
CREATE TRIGGER player_removed AFTER DELETE ON players BEGIN
      DELETE FROM corrections WHERE entity = 'player' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'player' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'player' AND entity_id = OLD.id;
    END;
CREATE TRIGGER consent_changed BEFORE UPDATE ON consents BEGIN
      SELECT RAISE(ABORT, 'consents are added, never changed');
    END;
CREATE TRIGGER consent_removed BEFORE DELETE ON consents
      WHEN EXISTS(SELECT 1 FROM players WHERE id = OLD.player_id) BEGIN
      SELECT RAISE(ABORT, 'consents are struck out, never removed');
    END;
CREATE TRIGGER session_removed AFTER DELETE ON sessions BEGIN
      DELETE FROM corrections WHERE entity = 'session' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'session' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'session' AND entity_id = OLD.id;
    END;
CREATE TRIGGER frame_removed AFTER DELETE ON frames BEGIN
      DELETE FROM corrections WHERE entity = 'frame' AND entity_id = OLD.id;
      DELETE FROM notes WHERE entity = 'frame' AND entity_id = OLD.id;
      DELETE FROM tags WHERE entity = 'frame' AND entity_id = OLD.id;
    END;
COMMIT;
