package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.leafward.measure.DayWords;

/**
 * Turns what the record holds into evidence. Each line says where it comes from and can
 * be struck; work that nobody logged is no evidence that it was not done.
 */
public final class RecordEvidence {

	private static final String REGISTER = "Register of plantings";

	private static final String LOG = "Care log";

	private static final String TEST = "Soil test";

	/** Groups of plants that are planted anew each year. */
	private static final Set<String> YEARLY = Set.of("annual", "vegetable", "transplant");

	private final Key key;

	private final RecordFacts facts;

	private final List<RecordLine> lines = new ArrayList<>();

	private RecordEvidence(Key key, RecordFacts facts) {
		this.key = key;
		this.facts = facts;
	}

	/**
	 * What the record says.
	 * @param key the key; evidences that it doesn't know are left out
	 * @param facts what the record holds
	 * @return species first, then planting, care, weather and soil
	 */
	public static List<RecordLine> of(Key key, RecordFacts facts) {
		RecordEvidence evidence = new RecordEvidence(key, facts);
		evidence.lines.addAll(HostEvidence.of(key, facts.plant()));
		evidence.planting();
		evidence.late();
		evidence.wounded();
		evidence.fed();
		evidence.light();
		evidence.lines.addAll(WeatherEvidence.of(facts));
		evidence.soil();
		return evidence.lines.stream()
			.filter((line) -> line.evidence() == null || key.evidence(line.evidence()).isPresent())
			.toList();
	}

	private void planting() {
		RecordFacts.Stand planting = this.facts.planting();
		if (planting == null) {
			return;
		}
		LocalDate day = planting.plantedOn();
		if (!day.isAfter(this.facts.seen()) && day.isAfter(this.facts.seen().minusYears(3))
				&& this.facts.plant().groups().stream().noneMatch(YEARLY::contains)) {
			add("transplanted-lately", RecordLine.Kind.PLANTING, "It was planted on " + DayWords.of(day), REGISTER);
		}
		if (planting.saltExposed()) {
			add("salt-near", RecordLine.Kind.PLANTING, "De-icing salt reaches it", REGISTER);
		}
	}

	/**
	 * Cut or fed so late that what grew could not ripen: inside a hold-off of the
	 * calendar, or from eight weeks before the median first freeze on.
	 */
	private void late() {
		latest((work) -> (work.kind().equals("prune") || work.kind().equals("feed")) && tooLate(work))
			.ifPresent((work) -> add("cut-or-fed-late", RecordLine.Kind.CARE_LOG,
					"It was %s on %s%s".formatted(work.kind().equals("prune") ? "pruned" : "fed",
							DayWords.of(work.day()),
							work.heldOff() ? ", when the calendar said to hold off" : ", late in the season"),
					LOG));
	}

	private boolean tooLate(RecordFacts.Work work) {
		Month month = north(work.day());
		if (month.getValue() < 8 || month == Month.DECEMBER) {
			return false;
		}
		Span.Freezes freezes = this.facts.freezes();
		if (work.heldOff() || freezes == null) {
			return work.heldOff();
		}
		// The median of another year lies on the same day of the year, within a day.
		LocalDate freeze = freezes.firstOfFall()
			.plusYears((long) work.day().getYear() - freezes.firstOfFall().getYear());
		return !work.day().isBefore(freeze.minusDays(56)) && !work.day().isAfter(freeze.plusDays(14));
	}

	private void wounded() {
		latest((work) -> work.kind().equals("prune") && north(work.day()).getValue() >= 4
				&& north(work.day()).getValue() <= 7)
			.ifPresent((work) -> add("wounded-april-to-july", RecordLine.Kind.CARE_LOG, "It was pruned on %s%s"
				.formatted(DayWords.of(work.day()), work.heldOff() ? ", when the calendar said to hold off" : ""),
					LOG));
	}

	private void fed() {
		List<RecordFacts.Work> fed = this.facts.works()
			.stream()
			.filter((work) -> work.kind().equals("feed") && !work.day().isBefore(this.facts.seen().minusDays(35)))
			.toList();
		if (fed.size() >= 2) {
			add("fed-heavily", RecordLine.Kind.CARE_LOG, "It was fed %d times in the five weeks before, last on %s"
				.formatted(fed.size(), DayWords.of(fed.get(0).day())), LOG);
		}
	}

	/** Into more light at once: moved or set out, and not hardened off. */
	private void light() {
		RecordFacts.Stand planting = this.facts.planting();
		RecordFacts.Hardening hardening = this.facts.hardening();
		LocalDate since = this.facts.seen().minusDays(21);
		Optional<RecordFacts.Work> moved = latest((work) -> work.kind().equals("move") && !work.day().isBefore(since));
		if (hardening.left() > hardening.done()) {
			add("moved-to-more-light", RecordLine.Kind.CARE_LOG,
					(hardening.left() == 1) ? "1 day of its hardening off was not done"
							: "%d days of its hardening off were not done".formatted(hardening.left()),
					"Care calendar");
		}
		else if (moved.isPresent()) {
			add("moved-to-more-light", RecordLine.Kind.CARE_LOG, "It was moved on " + DayWords.of(moved.get().day()),
					LOG);
		}
		else if (planting != null && planting.indoorsBefore() && hardening.done() == 0
				&& !planting.plantedOn().isBefore(since) && !planting.plantedOn().isAfter(this.facts.seen())) {
			add("moved-to-more-light", RecordLine.Kind.PLANTING,
					"It was set out on %s from indoors, and no hardening off was noted"
						.formatted(DayWords.of(planting.plantedOn())),
					REGISTER);
		}
	}

	private void soil() {
		RecordFacts.Soil soil = this.facts.soil();
		if (soil == null) {
			return;
		}
		String from = TEST + ", " + DayWords.of(soil.day());
		if (soil.acidity() > 7) {
			soil("soil-limy", "The soil has a pH of %.1f".formatted(soil.acidity()), from, true);
		}
		else if (soil.acidity() <= 6.5) {
			soil("soil-limy", "The soil has a pH of %.1f".formatted(soil.acidity()), from, false);
		}
		Boolean slow = soil.slow();
		if (slow != null) {
			soil("ground-wet", slow ? "The bed drains slowly" : "The bed drains well", from, slow);
		}
		Double salt = soil.conductivity();
		// 4 dS/m is the bound of a saline soil (USDA Handbook 60); below 2 few plants
		// mind.
		if (salt != null && (salt >= 4 || salt < 2)) {
			this.lines.add(new RecordLine("soil-salts", RecordLine.Kind.SOIL_TEST,
					"The soil has %.1f dS/m in the saturation extract".formatted(salt), from, null, true,
					(salt >= 4) ? Map.of("soil-salt", 4.0, "fertilizer-burn", 3.0)
							: Map.of("soil-salt", 0.3, "fertilizer-burn", 0.5)));
		}
	}

	private void soil(String evidence, String words, String from, boolean present) {
		this.lines.add(RecordLine.of("soil-" + evidence, RecordLine.Kind.SOIL_TEST, words, from, evidence, present));
	}

	private Optional<RecordFacts.Work> latest(Predicate<RecordFacts.Work> wanted) {
		return this.facts.works()
			.stream()
			.filter((work) -> !work.day().isAfter(this.facts.seen()))
			.filter(wanted)
			.findFirst();
	}

	private Month north(LocalDate day) {
		return this.facts.south() ? day.getMonth().plus(6) : day.getMonth();
	}

	private void add(String evidence, RecordLine.Kind kind, String words, String from) {
		this.lines.add(RecordLine.of("record-" + evidence, kind, words, from, evidence, true));
	}

}
