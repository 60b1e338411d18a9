package org.leafward.lookalikes.web;

import java.time.LocalDate;
import org.leafward.lookalikes.Basis;
import org.leafward.lookalikes.CaseLook;
import org.leafward.lookalikes.CaseState;
import org.leafward.lookalikes.PlantCase;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Finding;
import org.leafward.lookalikes.core.Pair;
import org.leafward.lookalikes.core.Sureness;
import org.leafward.measure.DayWords;

/** The first sentences of a case's page. */
final class CaseLead {

	private CaseLead() {
	}

	static String of(CaseLook look) {
		PlantCase one = look.plantCase();
		if (one.state() == CaseState.CLOSED) {
			return closed(look);
		}
		String may = mayBe(look);
		LocalDate sampled = one.sampledOn();
		return (one.state() == CaseState.WAITING && sampled != null)
				? "A sample went to a laboratory on %s. %s".formatted(DayWords.of(sampled), may) : may;
	}

	private static String closed(CaseLook look) {
		PlantCase one = look.plantCase();
		LocalDate day = one.closedOn();
		Basis basis = one.basis();
		String when = (day != null) ? DayWords.of(day) : "";
		String by = (basis != null) ? basis.words() : "";
		String id = one.cause();
		String name = (id != null) ? look.key().cause(id).map(Cause::name).orElse(id) : null;
		if (name == null) {
			return "It was taken for something else on %s, %s.".formatted(when, by);
		}
		boolean suspected = basis != Basis.LABORATORY
				&& look.key().cause(String.valueOf(id)).map(Cause::laboratory).orElse(false);
		return (suspected ? "It is suspected on %s, %s: %s." : "It was taken for this on %s, %s: %s.").formatted(when,
				by, name);
	}

	private static String mayBe(CaseLook look) {
		if (!look.ranking().known()) {
			return "Nothing is told yet. Each answer narrows it down.";
		}
		Finding first = look.ranking().first();
		String name = first.cause().name();
		if (!look.ranking().unsplit().isEmpty()) {
			Pair pair = look.ranking().unsplit().get(0);
			String other = pair.one().equals(first.cause().id()) ? pair.other() : pair.one();
			if (pair.has(first.cause().id())) {
				return "Two things fit, and what is known can’t part them: %s, or %s.".formatted(name,
						look.key().cause(other).map(Cause::name).orElse(other));
			}
		}
		String only = first.cause().laboratory() ? " Only a laboratory can confirm that." : "";
		return switch (first.how()) {
			case LIKELY -> "This is likely: %s.".formatted(name) + only;
			case MORE_LIKELY_THAN_OTHERS -> "This is more likely than the rest: %s.".formatted(name) + only;
			default -> "Several things fit; this comes first: %s.".formatted(name) + only;
		};
	}

	/** How sure a finding is, for the head of its entry. */
	static String how(Finding one) {
		return (one.how() == Sureness.LIKELY && one.cause().laboratory()) ? "likely, not confirmed" : one.how().words();
	}

}
