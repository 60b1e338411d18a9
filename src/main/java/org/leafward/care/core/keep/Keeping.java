package org.leafward.care.core.keep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Quantity;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.light.StartingLight;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.TreatedBed;
import org.leafward.measure.DayWords;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.NumberWords;
import org.leafward.register.NewSoilTest;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingFigures;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Site;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;

/**
 * What changes when a calculator's answer is kept for a planting, so that its tasks come
 * to the same amounts. What a calculator doesn't ask for stays as it is.
 *
 * @param figures what the planting is to have
 * @param litresPerMinute what the hose of the site is to give; null when it stays
 * @param soilTest a test of its bed to be kept; null when there is none
 * @param changes what is set, in words
 * @param remarks what can't become a figure, and by what the tasks go instead; sentences
 */
public record Keeping(PlantingFigures figures, @Nullable Double litresPerMinute, @Nullable NewSoilTest soilTest,
		List<Change> changes, List<String> remarks) {

	public Keeping {
		changes = List.copyOf(changes);
		remarks = List.copyOf(remarks);
	}

	/**
	 * A figure that is set.
	 *
	 * @param what which figure
	 * @param now what it is to be
	 * @param before what it was; null when it wasn't known, or is the same
	 * @param same whether it is so already
	 */
	public record Change(String what, String now, @Nullable String before, boolean same) {
	}

	/**
	 * Works out what changes.
	 * @param calculation the answer
	 * @param planting the planting
	 * @param site its site
	 * @param today the day there
	 * @param sampled for a soil test, the day of the sample
	 * @return what changes
	 * @throws org.leafward.measure.BadInput when a figure is out of the bounds of a
	 * planting
	 */
	public static Keeping of(Calculation calculation, Planting planting, Site site, LocalDate today,
			LocalDate sampled) {
		return new Reading(calculation, planting, site, today, sampled).keeping();
	}

	/** Reads one answer for one planting. */
	private static final class Reading {

		private final Calculation calculation;

		private final GivenFigures given;

		private final Planting planting;

		private final Site site;

		private final LocalDate today;

		private final LocalDate sampled;

		private final List<Change> changes = new ArrayList<>();

		private final List<String> remarks = new ArrayList<>();

		Reading(Calculation calculation, Planting planting, Site site, LocalDate today, LocalDate sampled) {
			this.calculation = calculation;
			this.given = calculation.figures();
			this.planting = planting;
			this.site = site;
			this.today = today;
			this.sampled = sampled;
		}

		Keeping keeping() {
			PlantingSize had = this.planting.size();
			Double area = set("Area of its bed", this.given.squareMetres(), had.squareMetres(), Quantity::area);
			Double trunk = set("Thickness of one trunk", this.given.calliperMillimetres(), had.calliperMillimetres(),
					(mm) -> Quantity.soilDepth(mm / 1000));
			Double pot = set("Volume of one pot", this.given.potLitres(), had.potLitres(), Quantity::litres);
			LocalDate day = day();
			boolean salt = set("De-icing salt reaches it", this.given.deIcing() ? true : null,
					this.planting.saltExposed() ? true : null, (yes) -> "yes") != null;
			Raised raised = raised();
			Double hose = this.given.litresPerMinute();
			// Refuses what no site has.
			new SiteSetting(this.site.place(), this.site.region(), this.site.features(), hose);
			set("The hose here gives", hose, this.site.litresPerMinute(),
					(flow) -> Quantity.litres(flow) + " a minute");
			NewSoilTest test = soilTest();
			remark();
			return new Keeping(new PlantingFigures(day, salt, new PlantingSize(area, trunk, pot), raised),
					Objects.equals(hose, this.site.litresPerMinute()) ? null : hose, test, this.changes, this.remarks);
		}

		/** What is given, else what was there. */
		private <T> @Nullable T set(String what, @Nullable T now, @Nullable T before, Function<T, String> words) {
			if (now == null) {
				return before;
			}
			boolean same = now.equals(before);
			this.changes
				.add(new Change(what, words.apply(now), (same || before == null) ? null : words.apply(before), same));
			return now;
		}

		/**
		 * A tree's day is what its plan hangs on. Seedlings go out on a day that is still
		 * to come; what stands outside since long isn't set out anew.
		 */
		private LocalDate day() {
			LocalDate before = this.planting.plantedOn();
			LocalDate now = this.given.plantedOn();
			boolean out = this.given.light() != null;
			if (now == null || (out && (before.isBefore(this.today) || this.planting.wintersIndoors()))) {
				return before;
			}
			return Objects
				.requireNonNull(set(out ? "Day of setting out" : "Day of planting", now, before, DayWords::of));
		}

		private @Nullable Raised raised() {
			Raised before = this.planting.raised();
			StartingLight light = this.given.light();
			if (light == null) {
				return before;
			}
			Optional<Raised> now = raised(light, this.site.point().hemisphere());
			if (now.isEmpty()) {
				this.remarks
					.add("Where it stands now stays as it was, as the answer names no window, lamp or greenhouse.");
				return before;
			}
			return set("Where it stands before it goes out", now.get(), before, Reading::words);
		}

		private static Optional<Raised> raised(StartingLight light, Hemisphere hemisphere) {
			if (light instanceof StartingLight.Lamp lamp) {
				return Optional.of(new Raised(RaisedIn.LAMPS, lamp.flux(), lamp.hours()));
			}
			if (light instanceof StartingLight.UnderGlass) {
				return Optional.of(new Raised(RaisedIn.GREENHOUSE, null, null));
			}
			if (light instanceof StartingLight.Windowsill sill) {
				boolean north = hemisphere == Hemisphere.NORTH;
				return Optional.of(new Raised(switch (sill.aspect()) {
					case EAST -> RaisedIn.MORNING_WINDOW;
					case WEST -> RaisedIn.AFTERNOON_WINDOW;
					case SOUTH -> north ? RaisedIn.MIDDAY_WINDOW : RaisedIn.SUNLESS_WINDOW;
					case NORTH -> north ? RaisedIn.SUNLESS_WINDOW : RaisedIn.MIDDAY_WINDOW;
				}, null, null));
			}
			return Optional.empty();
		}

		private static String words(Raised raised) {
			Double flux = raised.micromoles();
			Double hours = raised.hours();
			return raised.in().words() + ((flux != null) ? " of " + NumberWords.fixed(flux, 0) + " µmol/m²s" : "")
					+ ((hours != null)
							? " for " + NumberWords.fixed(hours, (hours == Math.rint(hours)) ? 0 : 1) + " hours" : "");
		}

		private @Nullable NewSoilTest soilTest() {
			SoilTest soil = this.given.soil();
			TreatedBed bed = this.given.bed();
			if (soil == null || bed == null) {
				return null;
			}
			Double ratio = soil.ratio();
			SoilFigures figures = new SoilFigures(soil.acidity(), soil.conductivity().measured(),
					SoilExtract.valueOf(soil.conductivity().extract().name()), ratio,
					(ratio == null) ? Double.valueOf(soil.exchangeable()) : null, soil.exchange());
			SoilDrainage drainage = SoilDrainage.valueOf(bed.drainage().name());
			NewSoilTest test = new NewSoilTest(this.planting.id(), this.sampled, figures,
					Math.round(bed.depthMetres() * 1000) / 10.0, drainage, "");
			this.changes.add(new Change("A test of its soil",
					"pH %s, %s dS/m in %s, %s, to a depth of %s, %s".formatted(NumberWords.fixed(figures.acidity(), 1),
							NumberWords.fixed(figures.conductivity(), 1), figures.extract().words(),
							(ratio != null) ? "SAR " + NumberWords.fixed(ratio, 1)
									: "ESP " + NumberWords.fixed(soil.exchangeable(), 1) + " %",
							Quantity.soilDepth(bed.depthMetres()), drainage.words()),
					null, false));
			return test;
		}

		private void remark() {
			String texture = this.given.texture();
			if (texture != null && !texture.equals(this.site.soil().words())) {
				this.remarks.add("The soil of the site stays %s; its tasks go by that and not by %s."
					.formatted(this.site.soil().words(), texture));
			}
			switch (this.calculation.calculator()) {
				case "water" -> this.remarks.add("How dry the soil is, its tasks take from the weather day by day.");
				case "light" -> this.remarks.add("Its tasks take the light of the site, %s, the coldest night of its "
					.formatted(this.site.sun().words()) + "kind, and the weather of each day.");
				case "salt" -> salt();
				case "soil-test" -> {
					this.remarks.add("Its tasks go down to 10 % of exchangeable sodium, with a product of which nine "
							+ "tenths are gypsum, in soil of the site’s texture.");
					onlyInTheGround();
				}
				default -> {
				}
			}
			if (this.planting.size().calliperMillimetres() != null
					&& "young-shrub".equals(this.calculation.inputs().get("what"))) {
				this.remarks.add("The thickness of its trunk is known, and goes before the pot that it came in.");
			}
		}

		private void salt() {
			if (this.calculation.inputs().containsKey("ec")) {
				this.remarks
					.add("The conductivity alone is no test of the soil: with pH and sodium from the same report "
							+ "keep the answer of the soil test.");
			}
			if (this.given.deIcing()) {
				this.remarks.add("Its tasks wash out half of the salt after the thaw, down to where its roots reach.");
			}
			onlyInTheGround();
		}

		private void onlyInTheGround() {
			if (this.planting.placement() == Placement.CONTAINER || this.planting.wintersIndoors()) {
				this.remarks.add("Tasks of this kind are for plants in the ground; this one stands in a container or "
						+ "indoors.");
			}
		}

	}

}
