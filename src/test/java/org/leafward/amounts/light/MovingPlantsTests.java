package org.leafward.amounts.light;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leafward.amounts.light.MovingHouseplants.DayIn;
import org.leafward.amounts.light.MovingHouseplants.Halt;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Houseplants, and plants that lost their tree. */
class MovingPlantsTests {

	private static final GeoPoint PLACE = new GeoPoint(42.1, -91.6, 220);

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final LocalDate JUNE = LocalDate.of(2027, 6, 1);

	private static final StartingLight EAST = new StartingLight.Windowsill(Aspect.EAST);

	/** Never straight to the midday sun, and shade first: Clemson HGIC, read. */
	@Test
	void shadePlantsNeverSeeTheSunAndSunLoversSeeItLate() {
		assertThat(out(SiteLight.SHADE)).extracting(RampDay::exposure).doesNotContain(Exposure.SUN, Exposure.SUN_UNTIL);
		List<RampDay> sun = out(SiteLight.FULL_SUN);
		assertThat(sun).hasSize(14);
		assertThat(sun.subList(0, 3)).extracting(RampDay::exposure)
			.allMatch((one) -> one == Exposure.DEEP_SHADE || one == Exposure.BRIGHT_SHADE);
		assertThat(sun.get(13).exposure()).isEqualTo(Exposure.ITS_PLACE);
	}

	private static List<RampDay> out(SiteLight site) {
		return HardeningRamp.plan(PLACE, CHICAGO, JUNE, 14, EAST, site, RampLimits.forNights(12.8)).days();
	}

	/** Sun, light shade, heavy shade, indoors, over about a week: Clemson HGIC, read. */
	@Test
	void theWayInGoesFromSunToShadeToTheWindow() {
		List<DayIn> days = MovingHouseplants.in(PLACE, LocalDate.of(2027, 9, 12), MovingHouseplants.USUAL_DAYS_IN,
				SiteLight.FULL_SUN, EAST);
		assertThat(days).extracting(DayIn::halt)
			.isSorted()
			.startsWith(Halt.SUMMER_PLACE)
			.contains(Halt.LIGHT_SHADE)
			.endsWith(Halt.INDOORS_BY_DAY);
		assertThat(days).extracting(DayIn::targetMoles).isSortedAccordingTo((a, b) -> Double.compare(b, a));
		DayIn last = days.get(6);
		assertThat(last.targetMoles()).isCloseTo(last.roomMoles(), within(1e-9));
		assertThat(last.words()).contains("indoors by day in its brightest window");
		assertThat(MovingHouseplants
			.in(PLACE, LocalDate.of(2027, 9, 12), 9, SiteLight.SHADE, new StartingLight.Windowsill(Aspect.NORTH))
			.stream()
			.map(DayIn::words)).anyMatch((words) -> words.contains("scale"));
		assertThat(MovingHouseplants.in(PLACE, JUNE, 7, SiteLight.SHADE, StartingLight.UnderGlass.GLASSHOUSE))
			.isEmpty();
	}

	/** 30 to 50 % of cloth for two to three weeks: common practice. */
	@Test
	void clothIsThinnedOverThreeWeeks() {
		List<EmergencyShade.Day> days = EmergencyShade.plan(PLACE, JUNE, EmergencyShade.USUAL_DAYS,
				SiteLight.PART_SHADE, SiteLight.FULL_SUN);
		assertThat(days).hasSizeBetween(14, 21);
		assertThat(days).extracting(EmergencyShade.Day::clothPercent).contains(30, 40, 50).endsWith(0);
		assertThat(days.get(0).words()).startsWith("Shade cloth of 60 % to the south and west");
		assertThat(days.get(20).words()).startsWith("The cloth comes off");
		assertThat(days.get(3).amount().explanation().toString()).contains("common practice", "equation");
		assertThat(EmergencyShade.plan(PLACE, JUNE, 21, SiteLight.FULL_SUN, SiteLight.SHADE)).isEmpty();
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> EmergencyShade.plan(PLACE, JUNE, 3, SiteLight.SHADE, SiteLight.FULL_SUN))
			.matches((ex) -> ex.where().equals("days"));
	}

	@Test
	void underTheClothThereIsNeverMoreThanTheAim() {
		Random random = new Random(5);
		for (int count = 0; count < 500; count++) {
			GeoPoint point = new GeoPoint(-60 + random.nextDouble() * 120, 0, 0);
			SiteLight before = SiteLight.values()[1 + random.nextInt(3)];
			SiteLight now = SiteLight.values()[random.nextInt(before.ordinal())];
			int last = 100;
			for (EmergencyShade.Day day : EmergencyShade.plan(point, JUNE.plusDays(random.nextInt(365)),
					7 + random.nextInt(36), before, now)) {
				assertThat(day.siteMoles() * (100 - day.clothPercent()) / 100)
					.isLessThanOrEqualTo(day.targetMoles() + 1e-6);
				assertThat(day.targetMoles()).isLessThanOrEqualTo(day.siteMoles() + 1e-9);
				assertThat(day.clothPercent()).isLessThanOrEqualTo(last);
				last = day.clothPercent();
			}
			assertThat(last).isZero();
		}
	}

}
