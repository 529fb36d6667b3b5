package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.StopName;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ScorePart;
import versewind.proposal.ServiceProposal;

/** Writes proposals as JSON. */
public final class ProposalJson {

    private static final int DECIMALS = 3;

    private ProposalJson() {}

    /** Up to five proposals for a verse, the best first. */
    public static String of(Plan plan, Instrument organ, RegistrationProposer.OfVerse found) {
        return Generated.json(json -> {
            heading(json, plan);
            json.writeArrayFieldStart("hymns");
            json.writeStartObject();
            hymn(json, plan, found.place().hymn());
            json.writeArrayFieldStart("verses");
            json.writeStartObject();
            verse(json, plan, found.place());
            json.writeArrayFieldStart("proposals");
            for (Proposal proposal : found.proposals()) {
                proposal(json, organ, proposal, "");
            }
            json.writeEndArray();
            if (found.none().isPresent()) {
                json.writeStringField("none", found.none().get());
            }
            json.writeEndObject();
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndArray();
        });
    }

    /** One proposal for every verse of some hymns, and what they cost together. */
    public static String of(Plan plan, Instrument organ, List<Integer> hymns, ServiceProposal found) {
        return Generated.json(json -> {
            heading(json, plan);
            json.writeFieldName("cost");
            json.writeNumber(Generated.rounded(found.cost(), DECIMALS));
            json.writeFieldName("bound");
            json.writeNumber(Generated.rounded(found.bound(), DECIMALS));
            json.writeFieldName("greedyCost");
            json.writeNumber(Generated.rounded(found.greedyCost(), DECIMALS));
            json.writeNumberField("pistons", found.pistons());
            json.writeNumberField("unsearched", found.unsearched());
            json.writeArrayFieldStart("hymns");
            for (int hymn : hymns) {
                json.writeStartObject();
                hymn(json, plan, hymn);
                verses(json, plan, organ, hymn, found);
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void heading(JsonGenerator json, Plan plan) throws IOException {
        json.writeStringField("plan", plan.heading().title());
        json.writeStringField("instrument", plan.instrument());
        json.writeNumberField("people", plan.heading().people());
    }

    private static void hymn(JsonGenerator json, Plan plan, int index) throws IOException {
        Hymn hymn = plan.hymns().get(index);
        json.writeNumberField("place", index + 1);
        json.writeStringField("number", hymn.number());
        json.writeStringField("title", hymn.title());
    }

    private static void verses(JsonGenerator json, Plan plan, Instrument organ, int hymn, ServiceProposal found)
            throws IOException {
        json.writeArrayFieldStart("verses");
        for (int index = 0; index < plan.hymns().get(hymn).verses().size(); index++) {
            VersePlace place = new VersePlace(hymn, index);
            json.writeStartObject();
            verse(json, plan, place);
            json.writeArrayFieldStart("proposals");
            for (ServiceProposal.OfVerse each : found.verses()) {
                if (each.place().equals(place)) {
                    proposal(json, organ, each.proposal(), each.piston());
                }
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void verse(JsonGenerator json, Plan plan, VersePlace place) throws IOException {
        Verse verse = plan.hymns().get(place.hymn()).verses().get(place.verse());
        json.writeNumberField("place", place.verse() + 1);
        VerseJson.head(json, verse);
        json.writeStringField("mood", verse.mood().word());
    }

    private static void proposal(JsonGenerator json, Instrument organ, Proposal proposal, String piston)
            throws IOException {
        json.writeStartObject();
        drawn(json, organ, proposal.registration());
        json.writeStringField("hands", proposal.hands().layout().word());
        json.writeStringField(
                "right", organ.divisions().get(proposal.hands().right()).name());
        json.writeStringField(
                "left", organ.divisions().get(proposal.hands().left()).name());
        if (!piston.isBlank()) {
            json.writeStringField("piston", piston);
        }
        json.writeFieldName("score");
        json.writeNumber(Generated.rounded(proposal.score().points(), DECIMALS));
        json.writeObjectFieldStart("parts");
        for (ScorePart part : proposal.score().parts()) {
            json.writeFieldName(part.kind().word());
            json.writeNumber(Generated.rounded(part.points(), DECIMALS));
        }
        json.writeEndObject();
        json.writeObjectFieldStart("reasons");
        for (ScorePart part : proposal.score().parts()) {
            json.writeStringField(part.kind().word(), part.sentence());
        }
        json.writeEndObject();
        json.writeStringField("why", proposal.why());
        json.writeEndObject();
    }

    private static void drawn(JsonGenerator json, Instrument organ, Registration drawn) throws IOException {
        json.writeArrayFieldStart("draw");
        for (int stop : drawn.stops().stream().toArray()) {
            StopName name = organ.stops().get(stop).name();
            json.writeStartObject();
            json.writeStringField("division", name.division());
            json.writeStringField("stop", name.label());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("couplers");
        for (int coupler : drawn.couplers().stream().toArray()) {
            json.writeString(organ.couplers().get(coupler).name());
        }
        json.writeEndArray();
        json.writeObjectFieldStart("box");
        for (int index = 0; index < organ.divisions().size(); index++) {
            Division division = organ.divisions().get(index);
            if (division.isEnclosed()) {
                json.writeStringField(division.name(), drawn.boxes().get(index).word());
            }
        }
        json.writeEndObject();
    }
}
