package org.leafward.care.core.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.phase.PhaseOrder.Dated;
import org.leafward.care.core.phase.PhaseOrder.Kept;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * By hand, on made-up days; that an apple breaks bud before it blooms is common practice.
 */
class PhaseOrderTests {

	private static final Dated BUD_BREAK = expected("bud-break", "04-20");

	private static final Dated LEAF = expected("leaf-expanded", "05-20");

	@Test
	void whatWasSeenEndsWhatComesBeforeIt() {
		Map<String, Kept> kept = PhaseOrder.keep(List.of(BUD_BREAK, seen("bloom-start", "05-01", "04-12"), LEAF));
		assertThat(kept.get("bud-break").day()).isEqualTo(day("04-12"));
		assertThat(kept.get("bud-break").by()).extracting(Dated::phase).isEqualTo("bloom-start");
		assertThat(kept.get("bloom-start").day()).isEqualTo(day("04-12"));
		assertThat(kept.get("leaf-expanded")).isEqualTo(new Kept(day("05-20"), null));
	}

	@Test
	void whatComesAfterWaits() {
		Map<String, Kept> kept = PhaseOrder.keep(List.of(BUD_BREAK, seen("bloom-start", "05-01", "05-25"), LEAF));
		assertThat(kept.get("bud-break")).isEqualTo(new Kept(day("04-20"), null));
		assertThat(kept.get("leaf-expanded").day()).isEqualTo(day("05-25"));
	}

	@Test
	void phasesOfOneDayHaveNoOrder() {
		Map<String, Kept> kept = PhaseOrder
			.keep(List.of(BUD_BREAK, seen("bloom-start", "04-20", "04-10"), expected("candle", "04-20")));
		assertThat(kept.get("bud-break").day()).isEqualTo(day("04-20"));
		assertThat(kept.get("candle").day()).isEqualTo(day("04-20"));
	}

	@Test
	void whatWasSeenStaysEvenOutOfOrder() {
		Map<String, Kept> kept = PhaseOrder.keep(List.of(expected("bud-swell", "04-01"),
				seen("bud-break", "04-20", "05-10"), seen("bloom-start", "05-01", "03-30"), LEAF));
		assertThat(kept.get("bud-break").day()).isEqualTo(day("05-10"));
		assertThat(kept.get("bloom-start").day()).isEqualTo(day("03-30"));
		assertThat(kept.get("bud-swell").day()).isEqualTo(day("03-30"));
	}

	private static Dated expected(String phase, String monthDay) {
		return new Dated(phase, day(monthDay), day(monthDay), false);
	}

	private static Dated seen(String phase, String usual, String monthDay) {
		return new Dated(phase, day(usual), day(monthDay), true);
	}

	private static LocalDate day(String monthDay) {
		return LocalDate.parse("2026-" + monthDay);
	}

}
