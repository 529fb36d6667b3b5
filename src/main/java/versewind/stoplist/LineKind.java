package versewind.stoplist;

import java.util.Optional;
import versewind.organ.Coupler;

/**
 * The kinds of line in a stop list. Each kind scores the text by what speaks for and against it; the kind with the
 * highest score takes it in. A text of another kind is one more constant here.
 *
 * <p>The scores are ranks of evidence, set by trying: a heading is surer than a coupler, which is surer than a stop;
 * what speaks against one lowers it below the next.
 */
enum LineKind {
    /** "Mano izquierda": the stops below play half of the keyboard. */
    HALF_HEADING {
        @Override
        int score(Candidate text) {
            return text.isHalf() ? 100 : 0;
        }

        @Override
        Section take(Candidate text) {
            int colon = text.text().indexOf(':');
            String half = colon < 0 ? text.text() : text.text().substring(0, colon);
            Section opened = text.lines().opened(text.section(), text.line());
            return text.goOn(
                    colon < 0 ? "" : text.text().substring(colon + 1).strip(),
                    text.lines().begin(opened.ofHalf(half(Spelling.unnumbered(half)))));
        }
    },

    /** "Couplers", "Accessories: 4 pistons", "Specification". */
    PART_HEADING {
        @Override
        int score(Candidate text) {
            return text.part().isPresent() && !text.isNumberedManual() ? 90 : 0;
        }

        @Override
        Section take(Candidate text) {
            SectionWord part = text.part().orElseThrow();
            if (part.kind() != SectionWord.Kind.TITLE) {
                return text.aids().part(part, text.line(), text.section());
            }
            boolean only = part.inline().isEmpty()
                    && text.lines().divisions().isEmpty()
                    && WordList.of("named manual")
                            .has(Spelling.words(part.head()).get(0));
            if (only) {
                Line outside = new Line(Compass.without(text.text()));
                String name = outside.part(0, (int) outside.tokens().stream()
                        .takeWhile(each -> !each.is(Token.Kind.OPEN))
                        .count());
                // "(I) Manual": what stands in brackets before it is no name
                String manual =
                        Spelling.unnumbered(name.isBlank() ? outside.outside().strip() : name);
                return text.lines().openManual(manual, Compass.keys(text.text(), false), text.line());
            }
            text.lines().leaveOut(text.line(), part.head(), "a title", Unread.Weight.NOTE);
            return text.goOn(
                    part.inline(),
                    text.names(part.inline()) ? text.lines().opened(text.section(), text.line()) : text.section());
        }
    },

    /** "II. Swell (enclosed)"; a name such as "Bombarde" is rather a stop where no pitches are written. */
    DIVISION_HEADING {
        @Override
        int score(Candidate text) {
            return text.heading().isEmpty() ? 0 : text.mayBeStopToo() ? 0 : 70;
        }

        @Override
        Section take(Candidate text) {
            DivisionHeading heading = text.heading().orElseThrow();
            String head = text.text()
                    .substring(0, text.text().length() - heading.inline().length());
            if (heading.word().isPedal() && WordList.of("permanent").in(head)) {
                text.lines().leaveOut(text.line(), head.strip(), "how the pedal is coupled", Unread.Weight.NOTE);
            }
            return text.goOn(heading.inline(), text.lines().open(heading, text.line()));
        }
    },

    /** "Swell to Great", "II/I, I/P"; a pair such as "I/P" is rather a coupler than a heading. */
    COUPLERS {
        @Override
        int score(Candidate text) {
            boolean pistons = WordList.of("general piston").at(Spelling.words(text.text()), 0) > 0;
            boolean own = text.couplers().couplers().stream().anyMatch(each -> each.kind() == Coupler.Kind.UNISON_OFF);
            return text.couplers().couplers().isEmpty() || pistons ? 0 : text.isPair() || own ? 80 : 60;
        }

        @Override
        Section take(Candidate text) {
            text.aids().take(text.couplers(), text.line(), text.section());
            return text.section();
        }
    },

    /** "Tremulant"; with a pitch it is rather a stop. */
    TREMULANTS {
        @Override
        int score(Candidate text) {
            return Tremulants.isOne(text.text()) && !Pitches.isMarked(text.text()) ? 50 : 0;
        }

        @Override
        Section take(Candidate text) {
            text.aids().tremulants(text.text(), text.line(), text.section());
            return text.section();
        }
    },

    /** A line under a heading of couplers, pistons or notes that is none of the above. */
    PLAYING_AID {
        @Override
        int score(Candidate text) {
            return text.section().kind().isPresent() ? 40 : 0;
        }

        @Override
        Section take(Candidate text) {
            text.aids().other(text.text(), text.line(), text.section().kind().orElseThrow());
            return text.section();
        }
    },

    /** Anything else: stops, or what is told apart piece by piece. */
    STOPS {
        @Override
        int score(Candidate text) {
            return 10;
        }

        @Override
        Section take(Candidate text) {
            return new StopsOfLine(text.reader(), text.line(), text.section()).read(text.text());
        }
    };

    /**
     * A text that is to be classified.
     *
     * @param reader who reads it
     * @param text what it says
     * @param line where it stands, counted from 1
     * @param section the part of the list in which it stands
     * @param couplers the couplers in it
     */
    record Candidate(LineReader reader, String text, int line, Section section, CouplerLine couplers) {

        Candidate(LineReader reader, String text, int line, Section section) {
            this(reader, text, line, section, reader.aids().couplers(text, section));
        }

        LineKind kind() {
            LineKind best = STOPS;
            for (LineKind each : values()) {
                best = each.score(this) > best.score(this) ? each : best;
            }
            return best;
        }

        private ParsedLines lines() {
            return reader.lines();
        }

        private PlayingAids aids() {
            return reader.aids();
        }

        private boolean isHalf() {
            return LineReader.isHalf(text);
        }

        /** True if it lists several stops. */
        private boolean names(String stops) {
            return Segments.ofStops(stops, reader.style()).stream()
                            .filter(each -> Segments.isNamed(each, reader.style()))
                            .count()
                    >= FEWEST_NAMES;
        }

        private Optional<SectionWord> part() {
            return reader.readings().part(text);
        }

        private Optional<DivisionHeading> heading() {
            return reader.readings().heading(text);
        }

        /** "(II) Manual": the number tells it from the word that heads the list of an organ with one manual. */
        private boolean isNumberedManual() {
            return new Line(text).is(0, Token.Kind.OPEN)
                    && part().filter(part -> part.kind() == SectionWord.Kind.TITLE)
                            .isPresent()
                    && heading()
                            .filter(head -> head.word().number().isPresent())
                            .isPresent();
        }

        private boolean mayBeStopToo() {
            return reader.readings().mayBeStop(text);
        }

        /** True if it joins two divisions: "I/P", "Ped + I", and among couplers "II-Ped." too. */
        private boolean isPair() {
            boolean among = !section.isElsewhere();
            Line line = new Line(text);
            return line.tokens().stream().anyMatch(each -> each.isSign("/"))
                    || JOINED.in(line) >= 0
                    || (among && DASHED.is(line) && !WordList.of("manual").in(text) && !line.is(0, Token.Kind.ROMAN))
                    || (among && text.length() < LONGEST_PAIR && TOUCHING.in(line) >= 0);
        }

        private Section goOn(String inline, Section next) {
            return inline.isEmpty() ? next : reader.text(inline, line, next);
        }
    }

    private static final TokenForm JOINED = TokenForm.of("word|roman|number|[.] [+] word|roman|number");
    private static final TokenForm DASHED = TokenForm.of("word [.]? _[-] _word [.]?");
    private static final TokenForm TOUCHING = TokenForm.of("word|roman|number|[.]|close ~[+-] ~word|roman|number");
    private static final int FEWEST_NAMES = 3;
    private static final int LONGEST_PAIR = 16;

    /** "Da mão esquerda": the hand without the preposition before it. */
    private static String half(String heading) {
        Line line = new Line(new Line(heading).outside().strip());
        return line.is(0, "before half") ? line.part(1, line.size()) : line.text();
    }

    /** How much speaks for a text being of this kind; 0 for nothing. */
    abstract int score(Candidate text);

    /** Takes a text in, and says in which part of the list whatever follows stands. */
    abstract Section take(Candidate text);
}
