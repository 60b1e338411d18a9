package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Parameter;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Degrees;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.water.Bed;
import org.leafward.amounts.water.BedWatering;
import org.leafward.amounts.water.Ground;
import org.leafward.amounts.water.PotWatering;
import org.leafward.amounts.water.TreeWatering;
import org.leafward.amounts.water.WinterWatering;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;
import org.leafward.measure.Explanation;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/** What somebody wants to water; nothing is checked yet. */
record WaterRequest(@Parameter(description = "bed, young-tree, tree, pot or young-shrub") @Nullable String what,
		@Parameter(description = "soil texture, loam when left out") @Nullable String soil,
		@Parameter(description = "area of the bed, m² or with its unit") @Nullable String area,
		@Parameter(description = "what the hose gives, l/min or with its unit") @Nullable String flow,
		@Parameter(
				description = "how deep the roots reach, mm or with its unit; 300 when left out") @Nullable String depth,
		@Parameter(description = "water missing to a full root zone, mm or with its unit; half of what the roots can "
				+ "take when left out") @Nullable String missing,
		@Parameter(description = "rain since that was reckoned, mm or with its unit") @Nullable String rain,
		@Parameter(description = "thickness of the trunk, mm or with its unit") @Nullable String calliper,
		@Parameter(description = "weeks since a young tree was planted, 4 when left out") @Nullable String weeks,
		@Parameter(description = "days without rain, for a grown tree; 21 when left out") @Nullable String dryDays,
		@Parameter(description = "volume of the pot, l or with its unit") @Nullable String pot,
		@Parameter(description = "whether the ground is frozen") @Nullable Boolean frozen, @Parameter(
				description = "in winter, the highest temperature of the day with its unit, such as 45 F or 7 C") @Nullable String warmest) {

	private static final Pattern TEMPERATURE = Pattern.compile("([-+]?\\d{1,3}(?:\\.\\d)?)\\s*°?\\s*([cCfF])");

	/** What can be watered. */
	enum What {

		BED("a bed or a lawn"), YOUNG_TREE("a tree that is growing in"), TREE("a tree that has grown in"),
		YOUNG_SHRUB("a shrub that is growing in"), POT("a pot");

		private final String words;

		What(String words) {
			this.words = words;
		}

		String words() {
			return this.words;
		}

	}

	static WaterRequest usual() {
		return new WaterRequest("bed", "loam", "10", "12", "300", "", "", "", "4", "21", "", null, "");
	}

	boolean asked() {
		return this.what != null;
	}

	/** How much, or that it is no day for watering. */
	Amount answer() {
		Findings all = new Findings();
		Supplier<Optional<Double>> maximum = all.read(this::maximum);
		Supplier<Amount> amount = all.read(this::amount);
		return all.give(() -> {
			boolean winter = Boolean.TRUE.equals(this.frozen) || maximum.get().isPresent();
			WinterWatering day = WinterWatering.on(Boolean.TRUE.equals(this.frozen), maximum.get().orElse(null));
			if (!winter || !Boolean.FALSE.equals(day.allowed())) {
				return amount.get();
			}
			return new Amount("Not today. " + day.reason(), Explanation.of("Watering in winter", "not today")
				.withDetail(day.reason())
				.withSource("Fall and Winter Watering, Fact Sheet 7.211, Colorado State University Extension, read "
						+ "in a repost")
				.withSteps(List.of(amount.get().explanation())));
		});
	}

	/** What it tells of plants and ground; asked once there is an answer. */
	GivenFigures figures() {
		Double flow = hose().orElse(null);
		return switch (Given.word("what", this.what, What.class)) {
			case BED -> GivenFigures.ofBed(Calculators.quantity(Dimension.AREA, "area", this.area).orElse(null), flow,
					ground().words());
			case YOUNG_TREE, TREE ->
				GivenFigures.ofTree(needed(Dimension.THICKNESS, "calliper", this.calliper), flow, null);
			case YOUNG_SHRUB, POT -> GivenFigures.ofPot(needed(Dimension.VOLUME, "pot", this.pot), flow);
		};
	}

	private Optional<Double> maximum() {
		if (this.warmest == null || this.warmest.isBlank()) {
			return Optional.empty();
		}
		Matcher matcher = TEMPERATURE.matcher(this.warmest.strip().replace(',', '.'));
		if (!matcher.matches()) {
			throw new BadInput("temperature '%s' can't be read".formatted(this.warmest), "warmest",
					"write it with its unit, such as 45 F or 7 C");
		}
		double degrees = Double.parseDouble(matcher.group(1));
		return Optional.of(matcher.group(2).equalsIgnoreCase("F") ? Degrees.ofFahrenheit(degrees) : degrees);
	}

	private Amount amount() {
		return switch (Given.word("what", this.what, What.class)) {
			case BED -> bed();
			case YOUNG_TREE -> youngTree();
			case TREE -> tree();
			case YOUNG_SHRUB -> {
				Findings all = new Findings();
				Supplier<Double> volume = all.read(() -> needed(Dimension.VOLUME, "pot", this.pot));
				Supplier<Optional<Double>> hose = all.read(this::hose);
				yield all.give(() -> PotWatering.youngShrub(volume.get(), hose.get().orElse(null))).amount();
			}
			case POT -> PotWatering.usual(needed(Dimension.VOLUME, "pot", this.pot)).amount();
		};
	}

	private Amount bed() {
		Findings all = new Findings();
		Supplier<Ground> ground = all.read(this::ground);
		Supplier<Optional<Double>> size = all.read(() -> Calculators.quantity(Dimension.AREA, "area", this.area));
		Supplier<Optional<Double>> hose = all.read(this::hose);
		Supplier<Double> roots = all
			.read(() -> Dimension.THICKNESS.read("depth", Calculators.or(this.depth, "300")) / 1000);
		Supplier<Optional<Double>> gone = all
			.read(() -> Calculators.quantity(Dimension.THICKNESS, "missing", this.missing));
		Supplier<Double> fell = all.read(() -> Dimension.THICKNESS.read("rain", Calculators.or(this.rain, "0")));
		return all.give(() -> {
			Bed bed = new Bed(ground.get(), roots.get(), size.get().orElse(null), hose.get().orElse(null));
			return BedWatering.refill(bed, gone.get().orElse(bed.readily()), fell.get());
		}).amount();
	}

	private Amount youngTree() {
		Findings all = new Findings();
		Supplier<Double> trunk = all.read(() -> needed(Dimension.THICKNESS, "calliper", this.calliper));
		Supplier<Integer> since = all.read(() -> days("weeks", Calculators.or(this.weeks, "4"), 2000));
		Supplier<Optional<Double>> hose = all.read(this::hose);
		return all.give(() -> TreeWatering.young(trunk.get(), since.get(), 1, hose.get().orElse(null))).amount();
	}

	private Amount tree() {
		Findings all = new Findings();
		Supplier<Double> trunk = all.read(() -> needed(Dimension.THICKNESS, "calliper", this.calliper));
		Supplier<Integer> dry = all.read(() -> days("dryDays", Calculators.or(this.dryDays, "21"), 366));
		Supplier<Ground> ground = all.read(this::ground);
		Supplier<Optional<Double>> hose = all.read(this::hose);
		return all.give(() -> TreeWatering.grown(trunk.get(), dry.get(), ground.get(), 1, hose.get().orElse(null)))
			.amount();
	}

	private Ground ground() {
		return Ground.of(Calculators.or(this.soil, "loam"));
	}

	private Optional<Double> hose() {
		return Calculators.quantity(Dimension.FLOW, "flow", this.flow);
	}

	private static double needed(Dimension dimension, String field, @Nullable String given) {
		return dimension.read(field, Given.text(field, given));
	}

	private static int days(String field, String given, int most) {
		int days = Given.whole(field, given);
		if (days < 0 || days > most) {
			throw new BadInput("%s %d is outside 0 to %d".formatted(field, days, most), field, "give a whole number");
		}
		return days;
	}

}
