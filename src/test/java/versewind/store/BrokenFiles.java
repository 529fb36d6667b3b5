package versewind.store;

import java.util.List;

/** Files with one mistake each, what the reader says to it, and whether a schema can see it. */
final class BrokenFiles {

    /** Whether the mistake is one of shape, which a schema sees, or of what a name refers to, which it cannot see. */
    enum Seen {
        BY_THE_SCHEMA,
        BY_THE_READER_ONLY
    }

    /**
     * A file with one mistake.
     *
     * @param text what is in it
     * @param sentence what the reader says after the name of the file
     * @param seen who can see it
     */
    record Broken(String text, String sentence, Seen seen) {
        @Override
        public String toString() {
            return sentence;
        }
    }

    private BrokenFiles() {}

    private static Broken plan(String part, String other, String sentence, Seen seen) {
        return new Broken(SmallOrgan.with(SmallOrgan.PLAN, part, other), sentence, seen);
    }

    private static Broken organ(String part, String other, String sentence, Seen seen) {
        return new Broken(SmallOrgan.with(SmallOrgan.FILE, part, other), sentence, seen);
    }

    static List<Broken> plans() {
        Seen schema = Seen.BY_THE_SCHEMA;
        Seen reader = Seen.BY_THE_READER_ONLY;
        return List.of(
                plan(
                        "\"format\": 1,",
                        "\"format\": 2,",
                        "line 2, format: this program reads format 1, not format 2. Use the version of the program that wrote the file.",
                        schema),
                plan("  \"format\": 1,\n", "", "line 1: the field \"format\" is missing. Add it here.", schema),
                plan(
                        "\"title\": \"Second",
                        "\"titel\": \"Second",
                        "line 3, titel: there is no field \"titel\" here. Did you mean \"title\"?",
                        schema),
                plan(
                        "\"note\": \"wait for the bell\"",
                        "\"silenced\": {\"gapp\": \"meant\"}",
                        "line 27, hymns[0].verses[1].silenced.gapp: there is no rule called \"gapp\". Did you mean \"gap\"?",
                        schema),
                plan(
                        "\"note\": \"wait for the bell\"",
                        "\"silenced\": {\"gap\": 1}",
                        "line 27, hymns[0].verses[1].silenced.gap: this has to be a text, but it is a number. Write it in quotation marks.",
                        schema),
                plan(
                        "\"format\": 1,",
                        "\"format\": 1, \"seconds a move\": 7,",
                        "line 2, [\"seconds a move\"]: this number is out of range. It lies between 0.1 and 5.",
                        schema),
                plan(
                        "\"title\": \"Second Sunday of Lent\"",
                        "\"title\": 7",
                        "line 3, title: this has to be a text, but it is a number. Write it in quotation marks.",
                        schema),
                plan(
                        "\"2027-02-21\"",
                        "\"21 February\"",
                        "line 4, date: \"21 February\" is no date. Write it like \"2026-10-04\", year, month, day.",
                        schema),
                plan(
                        "\"2027-02-21\"",
                        "\"2027-02-30\"",
                        "line 4, date: \"2027-02-30\" is no date. Write it like \"2026-10-04\", year, month, day.",
                        schema),
                plan(
                        "\"nether-wick\"",
                        "\"../nether-wick\"",
                        "line 5, instrument: \"../nether-wick\" is not the name of an instrument's file. Write the name of the file in the folder instruments, without its folder and without \".json\".",
                        schema),
                plan(
                        "\"nether-wick\"",
                        "\"nether-wyck\"",
                        "line 5, instrument: there is no such instrument. There is \"nether-wick\".",
                        reader),
                plan(
                        "\"people\": 70",
                        "\"people\": 0",
                        "line 6, people: the people expected are 1 to 50000. Correct it here.",
                        schema),
                plan(
                        "\"people\": 70",
                        "\"people\": 70.5",
                        "line 6, people: this has to be a whole number. Write it without a fraction.",
                        schema),
                plan(
                        "\"people\": 70",
                        "\"people\": 1e99",
                        "line 6, people: this number is far too large. Write a number that can be.",
                        schema),
                plan(
                        "\"people\": 70",
                        "\"people\": \"70\"",
                        "line 6, people: this has to be a number, but it is a text. Write it as a number, without quotation marks.",
                        schema),
                plan(
                        "\"people\": 70",
                        "\"people\": null",
                        "line 6, people: this has to be a number, but it is null. Write it as a number, without quotation marks.",
                        schema),
                plan(
                        "\"people\": 70,",
                        "\"people\": 70, \"people\": 80,",
                        "line 6, people: this field stands here twice, first in line 6. Take one of the two out.",
                        reader),
                plan(
                        "\"tempo\": 92",
                        "\"tempo\": 19",
                        "line 12, hymns[0].tempo: a tempo is 20 to 300 beats a minute. Correct it here.",
                        schema),
                plan(
                        "\"kind\": \"introduction\"",
                        "\"kind\": \"intro\"",
                        "line 15, hymns[0].verses[0].kind: there is no such word as \"intro\" here. Did you mean \"introduction\"?",
                        schema),
                plan(
                        "\"kind\": \"introduction\"",
                        "\"kind\": \"Introduction\"",
                        "line 15, hymns[0].verses[0].kind: there is no such word as \"Introduction\" here. Did you mean \"introduction\"?",
                        schema),
                plan(
                        "\"people\": 65",
                        "\"people\": 50001",
                        "line 22, hymns[0].verses[1].people: the people of a verse are 1 to 50000. Correct it here.",
                        schema),
                plan(
                        "\"singing\": \"strong\"",
                        "\"singing\": \"very loud indeed\"",
                        "line 22, hymns[0].verses[1].singing: there is no such word as \"very loud indeed\" here. The words here are \"gentle\", \"ordinary\", \"strong\", \"full voice\".",
                        schema),
                plan(
                        "\"right\": \"Great\"",
                        "\"right\": \"Pedal\"",
                        "line 23, hymns[0].verses[1].right: a hand cannot play the pedal. Name the division of a manual.",
                        reader),
                plan(
                        "\"right\": \"Great\"",
                        "\"right\": \"Graet\"",
                        "line 23, hymns[0].verses[1].right: the organ has no division \"Graet\". Did you mean \"Great\"?",
                        reader),
                plan(
                        "[\"Open Diapason 8\", ",
                        "[\"Open Diapson 8\", ",
                        "line 24, hymns[0].verses[1].drawn.Great[0]: the organ has no stop \"Open Diapson 8\" in Great. Did you mean \"Open Diapason 8\"?",
                        reader),
                plan(
                        "[\"Open Diapason 8\", ",
                        "[\"Trumpet 8\", ",
                        "line 24, hymns[0].verses[1].drawn.Great[0]: the organ has no stop \"Trumpet 8\" in Great. Great has \"Open Diapason 8\", \"Principal 4\", \"Fifteenth 2\".",
                        reader),
                plan(
                        "[\"Open Diapason 8\", ",
                        "[\"Principal 4\", ",
                        "line 24, hymns[0].verses[1].drawn.Great[1]: \"Principal 4\" stands here twice. Take one of the two out.",
                        schema),
                plan(
                        "{\"Great\": [\"Open Diapason 8\", ",
                        "{\"Choir\": [\"Open Diapason 8\", ",
                        "line 24, hymns[0].verses[1].drawn.Choir: the organ has no division \"Choir\". The divisions are \"Great\", \"Swell\", \"Pedal\".",
                        reader),
                plan(
                        "\"drawn\": {\"Great\": [\"Open Diapason 8\", \"Principal 4\"]",
                        "\"drawn\": {\"Great\": {}",
                        "line 24, hymns[0].verses[1].drawn.Great: this has to be a list, but it is an object. Write it in brackets [ ].",
                        schema),
                plan(
                        "\"Great to Pedal\"]",
                        "\"Great to Pedals\"]",
                        "line 25, hymns[0].verses[1].couplers[1]: the organ has no coupler \"Great to Pedals\". Did you mean \"Great to Pedal\"?",
                        reader),
                plan(
                        "[\"Tremulant\"]",
                        "\"Tremulant\"",
                        "line 19, hymns[0].verses[0].tremulants: this has to be a list, but it is a text. Write it in brackets [ ].",
                        schema),
                plan(
                        "{\"Swell\": \"three",
                        "{\"Great\": \"three",
                        "line 18, hymns[0].verses[0].boxes.Great: Great does not stand in a box. Leave out its position.",
                        reader),
                plan(
                        "\"three quarters\"",
                        "\"ajar\"",
                        "line 18, hymns[0].verses[0].boxes.Swell: there is no such word as \"ajar\" here. The words here are \"closed\", \"quarter\", \"half\", \"three quarters\", \"open\".",
                        schema),
                plan(
                        "\"note\": \"wait for the bell\"",
                        "\"note\": \"wait \\ud83c\"",
                        "line 27, hymns[0].verses[1].note: half of a character stands here. Write the whole character.",
                        reader),
                plan("\n}\n", "\n}\n{}\n", "line 33: something follows after the end. Take out what follows.", reader),
                plan(
                        "\"people\": 70,",
                        "\"people\": 70",
                        "line 7: this is not JSON: unexpected character ('\"'): was expecting comma to separate Object entries. Look for a comma, a quotation mark or a bracket, here or a line above.",
                        reader),
                plan(
                        "  ]\n}\n",
                        "  ]\n",
                        "line 32: the file ends too soon. It was cut off: restore it from a copy, or write what is missing.",
                        reader));
    }

    static List<Broken> organs() {
        Seen schema = Seen.BY_THE_SCHEMA;
        Seen reader = Seen.BY_THE_READER_ONLY;
        return List.of(
                organ(
                        "\"format\": 1,",
                        "\"format\": \"one\",",
                        "line 2, format: this has to be a number, but it is a text. Write it as a number, without quotation marks.",
                        schema),
                organ("\"St Osyn\"", "\" \"", "line 3, name: this must not be blank. Write a name.", schema),
                organ(
                        "\"mechanical\"",
                        "\"tracker\"",
                        "line 5, action: there is no such word as \"tracker\" here. The words here are \"mechanical\", \"electric\".",
                        schema),
                organ(
                        "\"volume\": 1800",
                        "\"volume\": 49",
                        "line 6, room: a room's volume lies between 50 and 500000 m3. Correct it here.",
                        schema),
                organ(
                        "\"seats\": 160",
                        "\"seats\": -1",
                        "line 6, room: a room has 0 to 50000 seats. Correct it here.",
                        schema),
                organ(
                        "\"125\": 2.0",
                        "\"125\": 21",
                        "line 9, room.reverberation: a reverberation time lies between 0.1 and 20 s. Correct it here.",
                        schema),
                organ(
                        "\"125\": 2.0",
                        "\"125\": 0.1",
                        "line 6, room: a reverberation of 0.1 s at 125 Hz would need 2900 m2 of absorption, and a room of 1800 m3 has not so much surface: the time is too short, or the volume is wrong. Correct it here.",
                        reader),
                organ(
                        "{\"125\": 2.0, \"250\": 1.9, \"500\": 1.8, \"1000\": 1.7, \"2000\": 1.5, \"4000\": 1.1}",
                        "{}",
                        "line 9, room.reverberation: reverberation is given for some of the octaves 125 to 4000 Hz. Correct it here.",
                        schema),
                organ(
                        "    \"reverberation\": {\"125\": 2.0, \"250\": 1.9, \"500\": 1.8, \"1000\": 1.7, \"2000\": 1.5, \"4000\": 1.1},\n",
                        "",
                        "line 6, room: a room has measured times or surfaces. Write \"reverberation\" or \"surfaces\"; times come first where there are both.",
                        schema),
                organ(
                        "\"reverberation\":",
                        "\"surfaces\": [], \"reverberation\":",
                        "line 9, room.surfaces: a list of surfaces has one at least. Correct it here.",
                        schema),
                organ(
                        "\"reverberation\":",
                        "\"surfaces\": [{\"material\": \"limestone wall\", \"area\": 700}], \"reverberation\":",
                        "line 6, room: the surfaces add up to 700 m2, but no room of 1800 m3 has less than 716 m2: a surface is missing, or the volume is wrong. Correct it here.",
                        reader),
                organ(
                        "\"reverberation\":",
                        "\"surfaces\": [{\"material\": \"audience seated per person\", \"area\": 900}], \"reverberation\":",
                        "line 9, room.surfaces[0].material: \"audience seated per person\" is no surface of an empty room: the people are counted by their number, so name the empty seats. Correct it here.",
                        reader),
                organ(
                        ", \"console\": 2",
                        "",
                        "line 10, room.distances: the field \"console\" is missing. Add it here.",
                        schema),
                organ(
                        "\"console\": 2",
                        "\"console\": 0",
                        "line 10, room.distances: a distance lies between 0.5 and 300 m. Correct it here.",
                        schema),
                organ(
                        "\"manual\": 1,",
                        "\"manual\": 8,",
                        "line 15, divisions[0].manual: this number is out of range. It lies between 1 and 7.",
                        schema),
                organ(
                        "\"manual\": 1,",
                        "\"manual\": 1, \"pedal\": true,",
                        "line 15, divisions[0].pedal: a division has either a manual or is the pedal. Write \"manual\" with its number, or \"pedal\": true.",
                        schema),
                organ(
                        "      \"manual\": 1,\n",
                        "",
                        "line 13, divisions[0]: a division has either a manual or is the pedal. Write \"manual\" with its number, or \"pedal\": true.",
                        schema),
                organ(
                        "\"pedal\": true",
                        "\"pedal\": false",
                        "line 39, divisions[2].pedal: this can only be true. Write \"manual\" with its number instead.",
                        schema),
                organ(
                        "\"manual\": 2",
                        "\"pedal\": true",
                        "line 26, divisions[1].keys: a pedal has 12 to 37 keys. Correct it here.",
                        schema),
                organ(
                        "\"manual\": 2,\n      \"keys\": 56",
                        "\"pedal\": true,\n      \"keys\": 30",
                        "line 37, divisions[2]: this is a second pedal, after the one in line 23. "
                                + "Put its stops into one pedal division.",
                        schema),
                organ(
                        "\"keys\": 30",
                        "\"keys\": 56",
                        "line 40, divisions[2].keys: a pedal has 12 to 37 keys. Correct it here.",
                        schema),
                organ(
                        "\"name\": \"Swell\"",
                        "\"name\": \"Great\"",
                        "line 24, divisions[1].name: two divisions are called \"Great\", the first in line 14. Give one of them another name.",
                        reader),
                organ(
                        "\"name\": \"Great\"",
                        "\"name\": \"Great: upper\"",
                        "line 14, divisions[0].name: a division's name has no colon. Write it without.",
                        schema),
                organ(
                        "{\"trim\": 2}",
                        "{\"trim\": 20.5}",
                        "line 27, divisions[1].box.trim: this number is out of range. It lies between -20 and 20.",
                        schema),
                organ(
                        "\"feet\": \"4\"",
                        "\"feet\": \"4'\"",
                        "line 19, divisions[0].stops[1].feet: \"4'\" is no footage from 1/8 to 64. Write it like \"8\", \"2 2/3\" or \"1/2\".",
                        schema),
                organ(
                        "\"feet\": \"4\"",
                        "\"feet\": 4",
                        "line 19, divisions[0].stops[1].feet: this has to be a text, but it is a number. Write it in quotation marks.",
                        schema),
                organ(
                        "\"feet\": \"4\"",
                        "\"feet\": \"65\"",
                        "line 19, divisions[0].stops[1].feet: \"65\" is no footage from 1/8 to 64. Write it like \"8\", \"2 2/3\" or \"1/2\".",
                        reader),
                organ(
                        " \"feet\": \"4\",",
                        "",
                        "line 19, divisions[0].stops[1]: a principal needs a footage. Correct it here.",
                        schema),
                organ(
                        "\"family\": \"solo reed\"",
                        "\"family\": \"reed\"",
                        "line 34, divisions[1].stops[2].family: there is no such word as \"reed\" here. The words here are \"principal\", \"flute\", \"string\", \"celeste\", \"mutation\", \"mixture\", \"cornet\", \"chorus reed\", \"solo reed\".",
                        schema),
                organ(
                        "\"family\": \"solo reed\"",
                        "\"family\": \"solo reed\", \"pipe\": \"open\"",
                        "line 34, divisions[1].stops[2]: a solo reed is not made of open pipes. Correct it here.",
                        schema),
                organ(
                        "\"family\": \"solo reed\"",
                        "\"family\": \"solo reed\", \"ranks\": 2",
                        "line 34, divisions[1].stops[2]: only compound stops have several ranks. Correct it here.",
                        schema),
                organ(
                        "\"ranks\": 2",
                        "\"ranks\": 3",
                        "line 30, divisions[1].stops[1]: every break of a compound stop has all its ranks. Correct it here.",
                        reader),
                organ(
                        "\"c#1\"",
                        "\"e#1\"",
                        "line 32, divisions[1].stops[1].composition[1].from: there is no key \"e#1\". Write C to B for the bottom octave, then c, c1, c2 and so on, sharps like \"c#1\".",
                        schema),
                organ(
                        "\"c#1\"",
                        "\"C\"",
                        "line 30, divisions[1].stops[1]: the breaks of a compound stop go upward. Correct it here.",
                        reader),
                organ(
                        "\"Pedal: Bourdon 16\"",
                        "\"Bourdon 16\"",
                        "line 43, divisions[2].stops[1].from: \"Bourdon 16\" does not name a stop. Write the division, a colon and the stop, like \"Pedal: Bourdon 16\".",
                        schema),
                organ(
                        "\"Pedal: Bourdon 16\"",
                        "\"Pedal: Bourdon 8\"",
                        "line 43, divisions[2].stops[1]: the organ has no stop \"Pedal: Bourdon 8\" to borrow from. Did you mean \"Pedal: Bourdon 16\"?",
                        reader),
                organ(
                        "\"Pedal: Bourdon 16\"",
                        "\"Pedal: Bass Flute 8\"",
                        "line 43, divisions[2].stops[1]: this stop borrows from itself. Let one stop of the circle have pipes.",
                        reader),
                organ(
                        "\"Pedal: Bourdon 16\"",
                        "\"Swell: Sesquialtera II\"",
                        "line 43, divisions[2].stops[1]: this stop and the one it borrows from have different numbers of ranks. Give both the same number of ranks.",
                        reader),
                organ(
                        "\"Fifteenth\", \"feet\": \"2\"",
                        "\"Principal\", \"feet\": \"4\"",
                        "line 20, divisions[0].stops[2]: Great has two stops called \"Principal 4\", the first in line 19. Give one of them another name.",
                        reader),
                organ(
                        "\"source\": \"Swell\", \"keyboard\": \"Great\"",
                        "\"source\": \"Swel\", \"keyboard\": \"Great\"",
                        "line 48, couplers[0].source: the organ has no division \"Swel\". Did you mean \"Swell\"?",
                        reader),
                organ(
                        "\"source\": \"Swell\", \"keyboard\": \"Great\"",
                        "\"source\": \"Great\", \"keyboard\": \"Great\"",
                        "line 48, couplers[0]: a unison coupler joins two divisions. Correct it here.",
                        reader),
                organ(
                        "\"kind\": \"octave\"",
                        "\"kind\": \"super octave\"",
                        "line 49, couplers[1].kind: there is no such word as \"super octave\" here. Did you mean \"sub-octave\"?",
                        schema),
                organ(
                        "\"Swell Octave\"",
                        "\"Swell to Great\"",
                        "line 49, couplers[1].name: two couplers are called \"Swell to Great\", the first in line 48. Give one of them another name.",
                        reader),
                organ(
                        "\"division\": \"Swell\"",
                        "\"division\": \"Echo\"",
                        "line 53, tremulants[0].division: the organ has no division \"Echo\". The divisions are \"Great\", \"Swell\", \"Pedal\".",
                        reader),
                organ(
                        "{\"Great\": 3}",
                        "{\"Echo\": 3}",
                        "line 55, pistons.divisionals.Echo: the organ has no division \"Echo\". The divisions are \"Great\", \"Swell\", \"Pedal\".",
                        reader),
                organ(
                        "{\"Great\": 3}",
                        "{\"Great\": 0}",
                        "line 55, pistons: a division with divisional pistons has one at least. Correct it here.",
                        schema),
                organ(
                        "\"generals\": 4, \"divisionals\": {\"Great\": 3}, ",
                        "",
                        "line 55, pistons: memory levels need pistons. Correct it here.",
                        schema),
                organ(
                        ", \"memory levels\": 8",
                        "",
                        "line 55, pistons: the field \"memory levels\" is missing. Add it here.",
                        schema));
    }
}
