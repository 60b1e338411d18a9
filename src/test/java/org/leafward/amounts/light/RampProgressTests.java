package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.amounts.light.RampProgress.Log;
import org.leafward.amounts.light.RampProgress.Turn;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;

/** That held days repeat their step and shift the rest is common practice. */
class RampProgressTests {

	private static final Hold COLD = new Hold("too cold");

	@Test
	void withoutAWordEveryDayHasItsStep() {
		RampProgress ramp = RampProgress.of(14, List.of(), Map.of());
		assertThat(ramp.length()).isEqualTo(14);
		assertThat(ramp.complete()).isTrue();
		assertThat(ramp.turns()).allMatch((turn) -> turn.step() == turn.number() && !turn.held() && !turn.past());
	}

	@Test
	void aHeldDayRepeatsItsStepAndShiftsTheRest() {
		RampProgress ramp = RampProgress.of(5, List.of(Log.TAKEN, Log.UNKNOWN), Map.of(4, COLD));
		assertThat(ramp.turns()).extracting(Turn::step).containsExactly(1, 2, 3, 4, 4, 5);
		assertThat(ramp.on(4)).isEqualTo(new Turn(4, 4, false, COLD, true));
		assertThat(ramp.on(5)).isEqualTo(new Turn(5, 4, false, null, false));
		assertThat(ramp.on(7)).isNull();
	}

	@Test
	void whatWasDoneGoesBeforeTheForecastAndWhatWasHeldHolds() {
		assertThat(RampProgress.of(5, List.of(Log.TAKEN), Map.of(1, COLD)).length()).isEqualTo(5);
		assertThat(RampProgress.of(5, List.of(Log.UNKNOWN), Map.of(1, COLD)).length()).isEqualTo(6);
		assertThat(RampProgress.of(5, List.of(Log.HELD), Map.of()).length()).isEqualTo(6);
	}

	@Test
	void afterMoreThanThreeHeldDaysItGoesBackAStep() {
		List<Log> three = List.of(Log.TAKEN, Log.TAKEN, Log.HELD, Log.HELD, Log.HELD);
		assertThat(RampProgress.of(6, three, Map.of()).on(6).step()).isEqualTo(3);
		List<Log> four = List.of(Log.TAKEN, Log.TAKEN, Log.HELD, Log.HELD, Log.HELD, Log.HELD);
		assertThat(RampProgress.of(6, four, Map.of()).on(7).step()).isEqualTo(2);
		assertThat(RampProgress.of(6, four, Map.of()).length()).isEqualTo(11);
	}

	@Test
	void itEndsAtTwiceItsLengthAndSaysThatItIsNotDone() {
		Map<Integer, Hold> all = new HashMap<>();
		IntStream.rangeClosed(1, 40).forEach((day) -> all.put(day, COLD));
		RampProgress ramp = RampProgress.of(10, List.of(), all);
		assertThat(ramp.length()).isEqualTo(20);
		assertThat(ramp.complete()).isFalse();
	}

	@Test
	void oneHeldDayMoreNeverShortensAndDaysKeepTheirNumbers() {
		Random random = new Random(3);
		for (int count = 0; count < 20_000; count++) {
			int steps = 3 + random.nextInt(26);
			List<Log> past = new ArrayList<>();
			for (int day = random.nextInt(steps); day > 0; day--) {
				past.add(Log.values()[random.nextInt(3)]);
			}
			Map<Integer, Hold> holds = new HashMap<>();
			double often = random.nextDouble();
			IntStream.rangeClosed(1, 2 * steps)
				.filter((day) -> random.nextDouble() < often)
				.forEach((day) -> holds.put(day, COLD));
			RampProgress before = RampProgress.of(steps, past, holds);
			for (int at = 0; at < before.length(); at++) {
				Turn turn = before.turns().get(at);
				assertThat(turn.number()).isEqualTo(at + 1);
				assertThat(turn.step()).isBetween(1, steps);
				assertThat(turn.past()).isEqualTo(at < past.size());
			}
			assertThat(before.length()).isBetween(before.complete() ? steps : 2 * steps, 2 * steps);
			Map<Integer, Hold> more = new HashMap<>(holds);
			more.put(1 + random.nextInt(2 * steps), COLD);
			RampProgress after = RampProgress.of(steps, past, more);
			assertThat(after.length()).isGreaterThanOrEqualTo(before.length());
			assertThat(after.complete() && !before.complete()).isFalse();
		}
	}

	@Test
	void daysOfTheCalendarKeepTheirNumbersAndHeldOnesWait() {
		LocalDate first = LocalDate.of(2027, 5, 6);
		HardeningRamp ramp = HardeningRamp.plan(new GeoPoint(42.1, -91.6, 220), ZoneId.of("America/Chicago"), first, 14,
				new StartingLight.Windowsill(Aspect.SOUTH), SiteLight.FULL_SUN, RampLimits.forNights(10));
		RampCalendar calendar = RampCalendar.of(ramp, List.of(Log.TAKEN, Log.TAKEN, Log.HELD, Log.HELD));
		assertThat(calendar.complete()).isTrue();
		assertThat(calendar.entries()).hasSize(16);
		assertThat(calendar.ready()).isEqualTo(first.plusDays(16));
		assertThat(calendar.entries()).filteredOn(RampCalendar.Entry::held)
			.extracting(RampCalendar.Entry::number)
			.containsExactly(3, 4);
		assertThat(calendar.entries().get(2).words()).isEqualTo("It stays in. Step 3 waits");
		assertThat(calendar.entries().get(3).amount().explanation().toString()).contains("goes back one step",
				"California Master Gardener Handbook");
		assertThat(calendar.entries().get(4).step().step()).isEqualTo(3);
		assertThat(calendar.entries().get(14).step().nightOut()).isTrue();
	}

}
