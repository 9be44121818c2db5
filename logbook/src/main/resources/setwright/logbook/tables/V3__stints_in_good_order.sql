-- Whether people said that the car was in good order: other stints of it on that circuit are held against the last such one.
ALTER TABLE stint ADD COLUMN good_order INTEGER DEFAULT 0 NOT NULL CHECK (good_order IN (0, 1));
