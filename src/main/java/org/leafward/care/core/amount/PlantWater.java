package org.leafward.care.core.amount;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.IntSupplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.limits.WateringLimit;
import org.leafward.amounts.salt.Leaching;
import org.leafward.amounts.salt.SaltedBed;
import org.leafward.amounts.water.Bed;
import org.leafward.amounts.water.BedWatering;
import org.leafward.amounts.water.Ground;
import org.leafward.amounts.water.PotWatering;
import org.leafward.amounts.water.TreeWatering;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.Computes;
import org.leafward.climate.WaterView;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.PlantingSize;
import org.leafward.register.SiteBeds;
import org.leafward.register.WateredDepths;

/**
 * The water of a site's plantings. What comes soon goes by how dry the soil is, what lies
 * farther off by what it usually takes.
 */
public final class PlantWater {

	/** Soil won't change much in so many days. */
	private static final int SOON = 3;

	/** A spell of so many days is one that grown trees are watered in. */
	private static final int FEWEST_DRY = 14;

	/**
	 * Amounts follow the balance in steps of so many mm, so that a task doesn't change
	 * daily.
	 */
	private static final double STEP = 5;

	/** From so many weeks on the water of a young tree stays the same. */
	private static final long GROWN_UP = 12;

	private final SiteBeds ground;

	private final LocalDate today;

	private final Ground soil;

	private final WateredDepths waterings;

	private final BiFunction<Roots, Map<LocalDate, Double>, Optional<WaterView>> balance;

	private final @Nullable WateringLimit limit;

	private final Map<WateredBed, Optional<WaterView>> balances = new HashMap<>();

	private final Map<Asked, Optional<Amount>> amounts = new HashMap<>();

	/**
	 * Prepares a site; nothing is looked up before a rule asks.
	 * @param ground the site and its beds
	 * @param today the day there
	 * @param waterings what its ground got
	 * @param balance the water of the last days in a bed of such plants that got so much,
	 * mm by day
	 * @param limit what the county allows; null for no limit
	 */
	public PlantWater(SiteBeds ground, LocalDate today, WateredDepths waterings,
			BiFunction<Roots, Map<LocalDate, Double>, Optional<WaterView>> balance, @Nullable WateringLimit limit) {
		this.ground = ground;
		this.today = today;
		this.soil = Ground.of(ground.site().soil().words());
		this.waterings = waterings;
		this.balance = balance;
		this.limit = limit;
	}

	/**
	 * How much.
	 * @param computes of what
	 * @param subject for which planting
	 * @param window the days of the task
	 * @return empty when the planting's size isn't known and the rule's words have to do
	 */
	public Optional<Amount> amount(Computes computes, Subject subject, DayWindow window) {
		Planting planting = subject.planting();
		Species species = subject.species();
		if (planting == null || species == null) {
			return Optional.empty();
		}
		long weeks = (computes == Computes.YOUNG_TREE)
				? Math.max(0, ChronoUnit.WEEKS.between(planting.plantedOn(), window.from())) : 0;
		Asked asked = new Asked(computes, planting.size(), bed(planting, species), planting.count(), soon(window),
				this.ground.around(planting).litresPerMinute(), Math.min(weeks, GROWN_UP));
		Optional<Amount> amount = this.amounts.computeIfAbsent(asked, this::work);
		return (computes == Computes.FLUSH_POT) ? amount : amount.map((one) -> limited(one, window));
	}

	/** What an amount goes by; the turns of a task, and plantings alike, share one. */
	private record Asked(Computes computes, PlantingSize size, WateredBed bed, int count, boolean soon,
			@Nullable Double flow, long weeks) {

		Roots roots() {
			return this.bed.roots;
		}

	}

	/**
	 * Beds with the same water in them.
	 *
	 * @param given what they got, mm by day
	 */
	private record WateredBed(Roots roots, Map<LocalDate, Double> given) {
	}

	private WateredBed bed(Planting planting, Species species) {
		return new WateredBed(Roots.of(species), this.waterings.of(planting.id()));
	}

	private Optional<Amount> work(Asked asked) {
		PlantingSize size = asked.size();
		return switch (asked.computes()) {
			case REFILL -> Optional.of(refill(asked));
			case YOUNG_TREE -> young(asked);
			case TREE -> Optional.ofNullable(size.calliperMillimetres())
				.map((trunk) -> TreeWatering.grown(trunk, dryDays(asked), this.soil, asked.count(), asked.flow())
					.amount());
			case POT -> Optional.ofNullable(size.potLitres()).map((pot) -> PotWatering.usual(pot).amount());
			case FLUSH_POT -> Optional.ofNullable(size.potLitres()).map((pot) -> PotWatering.flush(pot).amount());
			case LEACHING -> Optional.of(Leaching.half(SaltedBed.ofSoil(size.squareMetres(),
					asked.roots().depthMetres(), this.soil.words(), SaltedBed.Cause.DE_ICING))
				.amount());
			case COVER, GYPSUM, TESTED_LEACHING -> Optional.empty();
		};
	}

	private Optional<Amount> young(Asked asked) {
		PlantingSize size = asked.size();
		if (size.calliperMillimetres() != null) {
			return Optional
				.of(TreeWatering.young(size.calliperMillimetres(), asked.weeks(), asked.count(), asked.flow())
					.amount());
		}
		return Optional.ofNullable(size.potLitres()).map((pot) -> PotWatering.youngShrub(pot, asked.flow()).amount());
	}

	private Amount refill(Asked asked) {
		Bed bed = new Bed(this.soil, asked.roots().depthMetres(), asked.size().squareMetres(), asked.flow());
		WaterView.Day last = asked.soon() ? last(asked) : null;
		if (last == null) {
			return BedWatering.usual(bed).amount();
		}
		Amount amount = BedWatering
			.refill(bed, (last.depletion() < STEP) ? 0 : STEP * Math.round(last.depletion() / STEP), 0)
			.amount();
		List<Explanation> steps = new ArrayList<>(amount.explanation().steps());
		balance(asked).ifPresent((water) -> steps.add(water.explanation()));
		return new Amount(amount.words(), amount.explanation().withSteps(steps));
	}

	private boolean soon(DayWindow window) {
		return !window.from().isAfter(this.today.plusDays(SOON)) && !window.to().isBefore(this.today);
	}

	private @Nullable Integer dryDays(Asked asked) {
		WaterView.Day last = asked.soon() ? last(asked) : null;
		// Whether it is dry enough at all is for the rule to say.
		return (last == null || last.dryDays() < FEWEST_DRY) ? null : Integer.valueOf(last.dryDays());
	}

	private WaterView.@Nullable Day last(Asked asked) {
		return balance(asked).map((water) -> water.days().get(water.days().size() - 1)).orElse(null);
	}

	private Optional<WaterView> balance(Asked asked) {
		WateredBed bed = asked.bed();
		return this.balances.computeIfAbsent(bed,
				(one) -> this.balance.apply(bed.roots(), bed.given()).filter((water) -> !water.days().isEmpty()));
	}

	private Amount limited(Amount amount, DayWindow window) {
		WateringLimit county = this.limit;
		if (county == null) {
			return amount;
		}
		List<Explanation> steps = new ArrayList<>(amount.explanation().steps());
		steps.add(county.explain(window));
		return new Amount(amount.words() + " " + county.words(window), amount.explanation().withSteps(steps));
	}

}
