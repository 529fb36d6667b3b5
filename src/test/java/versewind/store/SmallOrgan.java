package versewind.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import versewind.organ.Instrument;
import versewind.schema.KnownOrgan;

/** An organ of two manuals and pedal, and a plan for it, as they stand in their files. */
final class SmallOrgan {
    static final String ID = "nether-wick";

    static final String FILE = """
        {
          "format": 1,
          "name": "St Osyn",
          "place": "Nether Wick",
          "action": "mechanical",
          "room": {
            "volume": 1800,
            "seats": 160,
            "reverberation": {"125": 2.0, "250": 1.9, "500": 1.8, "1000": 1.7, "2000": 1.5, "4000": 1.1},
            "distances": {"nave": 12, "far": 20.5, "choir": 6, "choir to nave": 8, "console": 2}
          },
          "divisions": [
            {
              "name": "Great",
              "manual": 1,
              "keys": 56,
              "stops": [
                {"name": "Open Diapason", "feet": "8", "family": "principal"},
                {"name": "Principal", "feet": "4", "family": "principal"},
                {"name": "Fifteenth", "feet": "2", "family": "principal", "trim": -1.5}
              ]
            },
            {
              "name": "Swell",
              "manual": 2,
              "keys": 56,
              "box": {"trim": 2},
              "stops": [
                {"name": "Stopped Diapason", "feet": "8", "family": "flute", "pipe": "stopped"},
                {"name": "Sesquialtera", "ranks": 2, "family": "mixture", "composition": [
                  {"from": "C", "feet": ["1 1/3", "4/5"]},
                  {"from": "c#1", "feet": ["2 2/3", "1 3/5"]}
                ]},
                {"name": "Oboe", "feet": "8", "family": "solo reed"}
              ]
            },
            {
              "name": "Pedal",
              "pedal": true,
              "keys": 30,
              "stops": [
                {"name": "Bourdon", "feet": "16", "family": "flute", "pipe": "stopped"},
                {"name": "Bass Flute", "feet": "8", "family": "flute", "pipe": "stopped", \
        "from": "Pedal: Bourdon 16"}
              ]
            }
          ],
          "couplers": [
            {"name": "Swell to Great", "source": "Swell", "keyboard": "Great"},
            {"name": "Swell Octave", "source": "Swell", "keyboard": "Swell", "kind": "octave"},
            {"name": "Great to Pedal", "source": "Great", "keyboard": "Pedal"}
          ],
          "tremulants": [
            {"name": "Tremulant", "division": "Swell"}
          ],
          "pistons": {"generals": 4, "divisionals": {"Great": 3}, "memory levels": 8}
        }
        """;

    static final String PLAN = """
        {
          "format": 1,
          "title": "Second Sunday of Lent",
          "date": "2027-02-21",
          "instrument": "nether-wick",
          "people": 70,
          "hymns": [
            {
              "number": "12",
              "title": "The river rises early",
              "tune": "Nether Wick",
              "tempo": 92,
              "verses": [
                {
                  "kind": "introduction", "label": "Intro", "mode": "melody soloed", "singing": "ordinary",
                  "hands": "melody soloed", "right": "Swell", "left": "Great",
                  "drawn": {"Great": ["Open Diapason 8"], "Swell": ["Oboe 8"], "Pedal": ["Bourdon 16"]},
                  "boxes": {"Swell": "three quarters"},
                  "tremulants": ["Tremulant"]
                },
                {
                  "kind": "verse", "label": "V1", "mode": "congregation", "singing": "strong", "people": 65,
                  "hands": "four parts", "right": "Great", "left": "Great",
                  "drawn": {"Great": ["Open Diapason 8", "Principal 4"], "Pedal": ["Bourdon 16", "Bass Flute 8"]},
                  "couplers": ["Swell to Great", "Great to Pedal"],
                  "piston": "G2",
                  "note": "wait for the bell"
                }
              ]
            }
          ]
        }
        """;

    private SmallOrgan() {}

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static Instrument read(String file) throws BadFile {
        return InstrumentJson.read(Path.of("instruments/nether-wick.json"), bytes(file))
                .instrument();
    }

    static Instrument organ() {
        try {
            return read(FILE);
        } catch (BadFile wrong) {
            throw new IllegalStateException(wrong);
        }
    }

    static PlanJson.Read readPlan(String file) throws BadFile {
        return readPlan(bytes(file));
    }

    static PlanJson.Read readPlan(byte[] file) throws BadFile {
        Instrument organ = organ();
        return PlanJson.read(Path.of("plans/lent.json"), file, (id, found) -> {
            if (!id.equals(ID)) {
                throw found.bad("there is no such instrument", "There is \"nether-wick\".");
            }
            return KnownOrgan.of(organ);
        });
    }

    /** The text with one part replaced, which must be there. */
    static String with(String text, String part, String other) {
        if (!text.contains(part)) {
            throw new IllegalArgumentException("not in the text: " + part);
        }
        int at = text.indexOf(part);
        return text.substring(0, at) + other + text.substring(at + part.length());
    }
}
