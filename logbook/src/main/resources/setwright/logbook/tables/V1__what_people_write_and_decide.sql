-- One schema for SQLite and PostgreSQL. ${id} is what numbers the rows of a table there.
-- Times are UTC in ISO 8601, so that they sort as text. SI units; columns end with theirs.

CREATE TABLE circuit (
    id ${id},
    name TEXT NOT NULL UNIQUE,
    document TEXT NOT NULL,
    length_m DOUBLE PRECISION NOT NULL,
    added_at TEXT NOT NULL
);

CREATE TABLE driver (
    id ${id},
    name TEXT NOT NULL UNIQUE
);

CREATE TABLE car (
    id ${id},
    name TEXT NOT NULL UNIQUE,
    added_at TEXT NOT NULL
);

-- A version of a car's sheet; never changed afterwards.
CREATE TABLE setup (
    id ${id},
    car_id BIGINT NOT NULL REFERENCES car (id),
    number INTEGER NOT NULL,
    parent_id BIGINT REFERENCES setup (id),
    sheet TEXT NOT NULL,
    difference TEXT NOT NULL,
    why TEXT NOT NULL,
    together TEXT NOT NULL,
    made_at TEXT NOT NULL,
    UNIQUE (car_id, number)
);

-- Which version went onto the car, and when; the last one is on it.
CREATE TABLE fitting (
    id ${id},
    setup_id BIGINT NOT NULL REFERENCES setup (id),
    undoes INTEGER NOT NULL CHECK (undoes IN (0, 1)),
    why TEXT NOT NULL,
    fitted_at TEXT NOT NULL
);

-- A file that came in; the columns of its channels lie beside the database.
CREATE TABLE recording (
    id ${id},
    name TEXT NOT NULL,
    source_digest TEXT NOT NULL UNIQUE,
    file TEXT NOT NULL,
    file_digest TEXT NOT NULL,
    rate_hz DOUBLE PRECISION NOT NULL,
    samples BIGINT NOT NULL,
    channels TEXT NOT NULL,
    remarks TEXT NOT NULL,
    added_at TEXT NOT NULL
);

CREATE TABLE stint (
    id ${id},
    recording_id BIGINT NOT NULL UNIQUE REFERENCES recording (id),
    car_id BIGINT NOT NULL REFERENCES car (id),
    setup_id BIGINT NOT NULL REFERENCES setup (id),
    driver_id BIGINT NOT NULL REFERENCES driver (id),
    circuit_id BIGINT NOT NULL REFERENCES circuit (id),
    laps INTEGER NOT NULL,
    good_laps INTEGER NOT NULL,
    best_s DOUBLE PRECISION,
    mean_s DOUBLE PRECISION,
    tyre_age_laps INTEGER,
    track_celsius DOUBLE PRECISION,
    fuel_start_kg DOUBLE PRECISION,
    added_at TEXT NOT NULL
);

CREATE TABLE diagnosis (
    id ${id},
    stint_id BIGINT NOT NULL UNIQUE REFERENCES stint (id),
    verdict TEXT NOT NULL,
    repeatable INTEGER NOT NULL CHECK (repeatable IN (0, 1)),
    made_at TEXT NOT NULL
);

CREATE TABLE finding (
    id ${id},
    diagnosis_id BIGINT NOT NULL REFERENCES diagnosis (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    phase TEXT NOT NULL,
    speed TEXT NOT NULL,
    balance TEXT NOT NULL,
    set_off_by TEXT NOT NULL,
    cause TEXT NOT NULL,
    corners TEXT NOT NULL,
    lap_share DOUBLE PRECISION NOT NULL,
    lap_wide INTEGER NOT NULL CHECK (lap_wide IN (0, 1)),
    probability DOUBLE PRECISION NOT NULL,
    price_s DOUBLE PRECISION NOT NULL,
    price_low_s DOUBLE PRECISION NOT NULL,
    price_high_s DOUBLE PRECISION NOT NULL,
    UNIQUE (diagnosis_id, place)
);

-- What was proposed after a stint; without an item: leave the car alone.
CREATE TABLE proposal (
    id ${id},
    stint_id BIGINT NOT NULL UNIQUE REFERENCES stint (id),
    item TEXT NOT NULL,
    from_value TEXT NOT NULL,
    to_value TEXT NOT NULL,
    unit TEXT NOT NULL,
    reason TEXT NOT NULL,
    made_at TEXT NOT NULL
);

-- A change driven back to back. Judged again and again until it is over.
CREATE TABLE trial (
    id ${id},
    car_id BIGINT NOT NULL REFERENCES car (id),
    driver_id BIGINT NOT NULL REFERENCES driver (id),
    circuit_id BIGINT NOT NULL REFERENCES circuit (id),
    first_stint_id BIGINT NOT NULL REFERENCES stint (id),
    before_id BIGINT NOT NULL REFERENCES setup (id),
    change_words TEXT NOT NULL,
    together TEXT NOT NULL,
    plan TEXT NOT NULL,
    laps_a_run INTEGER NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('open', 'over')),
    opened_at TEXT NOT NULL
);

CREATE TABLE trial_item (
    trial_id BIGINT NOT NULL REFERENCES trial (id),
    item TEXT NOT NULL,
    from_value TEXT NOT NULL,
    to_value TEXT NOT NULL,
    unit TEXT NOT NULL,
    PRIMARY KEY (trial_id, item)
);

-- A stint that somebody left out of a trial.
CREATE TABLE trial_aside (
    trial_id BIGINT NOT NULL REFERENCES trial (id),
    stint_id BIGINT NOT NULL REFERENCES stint (id),
    why TEXT NOT NULL,
    PRIMARY KEY (trial_id, stint_id)
);

CREATE TABLE verdict (
    id ${id},
    trial_id BIGINT NOT NULL REFERENCES trial (id),
    runs TEXT NOT NULL,
    plan_share DOUBLE PRECISION NOT NULL,
    verdict TEXT NOT NULL,
    reason TEXT NOT NULL,
    made_at TEXT NOT NULL,
    UNIQUE (trial_id, runs)
);

-- What a change was to do and what it did: the lap time (no phase), or the balance of a phase (of one class of corners, or of all).
CREATE TABLE tried_effect (
    verdict_id BIGINT NOT NULL REFERENCES verdict (id),
    phase TEXT NOT NULL,
    speed TEXT NOT NULL,
    unit TEXT NOT NULL CHECK (unit IN ('s', 'rad')),
    predicted DOUBLE PRECISION,
    predicted_low DOUBLE PRECISION,
    predicted_high DOUBLE PRECISION,
    measured DOUBLE PRECISION NOT NULL,
    measured_low DOUBLE PRECISION NOT NULL,
    measured_high DOUBLE PRECISION NOT NULL,
    error DOUBLE PRECISION NOT NULL,
    PRIMARY KEY (verdict_id, phase, speed)
);

-- The story, in order: each thing that was done, in a sentence, and what people noted.
CREATE TABLE entry (
    id ${id},
    written_at TEXT NOT NULL,
    kind TEXT NOT NULL,
    car_id BIGINT REFERENCES car (id),
    stint_id BIGINT REFERENCES stint (id),
    words TEXT NOT NULL
);

-- One change at a time.
CREATE UNIQUE INDEX one_open_trial ON trial (car_id) WHERE state = 'open';

CREATE INDEX setup_of_car ON setup (car_id);
CREATE INDEX fitting_of_setup ON fitting (setup_id);
CREATE INDEX stint_of_car ON stint (car_id);
CREATE INDEX finding_of_diagnosis ON finding (diagnosis_id);
CREATE INDEX trial_of_car ON trial (car_id);
CREATE INDEX verdict_of_trial ON verdict (trial_id);
CREATE INDEX entry_in_time ON entry (written_at);
