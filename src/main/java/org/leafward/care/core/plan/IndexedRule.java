package org.leafward.care.core.plan;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskText;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.PlantFacts;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.core.rule.Variant;
import org.leafward.care.core.rule.Where;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.plants.SpeciesId;

/** A rule with what planning asks of it again and again worked out once. */
final class IndexedRule {

	private final RulePack pack;

	private final Rule rule;

	private final int number;

	private final String reference;

	private final Concern anywhereAtAnyAge;

	private final Concern anyAge;

	private final boolean asksOfGround;

	private final boolean oncePerPlanting;

	private final List<Wording> wordings;

	private final Map<SpeciesId, Wording> bySpecies = new ConcurrentHashMap<>();

	private final long basis;

	private final List<TimedBy> ends;

	IndexedRule(RulePack pack, Rule rule, int number, ToIntFunction<Anchor> slots) {
		this.pack = pack;
		this.rule = rule;
		this.number = number;
		this.reference = pack.reference(rule);
		Concern concern = rule.concern();
		this.anyAge = atAnyAge(concern, concern);
		this.anywhereAtAnyAge = atAnyAge(concern, null);
		this.asksOfGround = !this.anyAge.equals(this.anywhereAtAnyAge);
		this.oncePerPlanting = rule.timing().oncePerPlanting();
		this.wordings = (rule.timing() instanceof Ramp ramp) ? days(rule.text(), ramp)
				: List.of(Wording.of(rule.text()));
		this.basis = fingerprint();
		this.ends = Stream
			.concat(Stream.of(own(rule, slots)), rule.variants().stream().map((variant) -> at(variant, slots)))
			.toList();
	}

	private static TimedBy own(Rule rule, ToIntFunction<Anchor> slots) {
		Timing timing = rule.timing();
		if (timing instanceof Ramp ramp) {
			return new TimedBy(Slotted.of(ramp.anchor(), slots), Slotted.of(ramp.anchor(), slots), null);
		}
		Anchor from = (timing instanceof Span span) ? span.from() : ((DayByDay) timing).from();
		Anchor to = (timing instanceof Span span) ? span.to() : ((DayByDay) timing).to();
		return new TimedBy(Slotted.of(from, slots), Slotted.of(to, slots), null);
	}

	private TimedBy at(Variant variant, ToIntFunction<Anchor> slots) {
		TimedBy own = own(this.rule, slots);
		Anchor from = variant.from();
		Anchor to = variant.to();
		return new TimedBy((from != null) ? Slotted.of(from, slots) : own.from(),
				(to != null) ? Slotted.of(to, slots) : own.to(), variant);
	}

	/**
	 * An anchor with its number among those that all plantings of a site share.
	 *
	 * @param slot the number, or -1 when its date differs between plantings
	 */
	record Slotted(Anchor anchor, int slot) {

		static Slotted of(Anchor anchor, ToIntFunction<Anchor> slots) {
			return new Slotted(anchor, slots.applyAsInt(anchor));
		}

	}

	/** What the ends of the rule hang on at some site; a ramp hangs on one anchor. */
	record TimedBy(Slotted from, Slotted to, @Nullable Variant variant) {

		boolean shared() {
			return this.from.slot >= 0 && this.to.slot >= 0;
		}

		boolean leftOut() {
			return this.variant != null && this.variant.leaveOut();
		}

	}

	/** What the ends hang on at a site. */
	TimedBy timedBy(SiteFacts site) {
		List<Variant> variants = this.rule.variants();
		for (int i = 0; i < variants.size(); i++) {
			if (variants.get(i).where().contains(site.region(), site.county())) {
				return this.ends.get(i + 1);
			}
		}
		return this.ends.get(0);
	}

	private static Concern atAnyAge(Concern concern, @Nullable Concern ground) {
		return new Concern(concern.groups(), concern.species(), concern.traits(), concern.exceptGroups(),
				concern.exceptSpecies(), concern.placement(), concern.wintersIndoors(), concern.saltExposed(),
				YearsSincePlanting.ANY, (ground != null) ? ground.soils() : Set.of(),
				(ground != null) ? ground.where() : Where.ANYWHERE, concern.site(), concern.freezing());
	}

	private static List<Wording> days(TaskText text, Ramp ramp) {
		int days = ramp.days();
		return IntStream.rangeClosed(1, days)
			.mapToObj((day) -> Wording.of(day(text, ramp.stepOn(day), day, days)))
			.toList();
	}

	private static TaskText day(TaskText text, RampStep step, int day, int days) {
		return new TaskText("Day %d of %d: %s".formatted(day, days, text.title()), step.text(),
				step.place() + hours(step), text.why(), text.otherwise(), text.caution());
	}

	private static String hours(RampStep step) {
		Double hours = step.hours();
		if (hours == null || step.place().contains("day and night")) {
			return "";
		}
		return (hours == 24) ? ", and out day and night"
				: ", for %s %s".formatted(number(hours), (hours == 1) ? "hour" : "hours");
	}

	private static String number(double hours) {
		return (hours == Math.rint(hours)) ? String.valueOf((long) hours) : String.valueOf(hours);
	}

	/** A number for all that a task and its explanation take from the rule itself. */
	private long fingerprint() {
		String words = this.reference + '|' + this.rule.kind() + '|' + this.rule.work() + '|' + this.pack.title() + '|'
				+ this.pack.versionOf(this.rule) + '|' + this.pack.region() + '|' + this.rule.sources() + '|'
				+ this.wordings.stream().map(Wording::name).toList() + amounts()
				+ this.rule.variants().stream().map((variant) -> variant.why() + variant.sources()).toList();
		return ByteBuffer.wrap(Wording.sha256().digest(words.getBytes(StandardCharsets.UTF_8))).getLong();
	}

	private List<String> amounts() {
		return this.rule.amounts()
			.entrySet()
			.stream()
			.map((amount) -> amount.getKey().value() + amount.getValue())
			.sorted()
			.toList();
	}

	RulePack pack() {
		return this.pack;
	}

	Rule rule() {
		return this.rule;
	}

	/** Place in the index, from 0. */
	int number() {
		return this.number;
	}

	String reference() {
		return this.reference;
	}

	boolean oncePerPlanting() {
		return this.oncePerPlanting;
	}

	long basis() {
		return this.basis;
	}

	/** Whether the rule may be for such a planting somewhere, at some age. */
	boolean mayConcern(PlantFacts plant) {
		return this.anywhereAtAnyAge.appliesTo(plant);
	}

	/** Whether a rule that may be for such a planting is for it on this ground. */
	boolean concernsHere(PlantFacts plant) {
		return !this.asksOfGround || this.anyAge.appliesTo(plant);
	}

	boolean concernsIn(int yearsSincePlanting) {
		return this.rule.concern().years().contains(yearsSincePlanting)
				&& (!this.oncePerPlanting || yearsSincePlanting == 0);
	}

	/**
	 * The words for a species.
	 * @param species the species, or null for a site
	 * @param occurrence the day of a ramp, from 1; anything else otherwise
	 */
	Wording wording(@Nullable SpeciesId species, int occurrence) {
		if (this.rule.timing() instanceof Ramp) {
			return this.wordings.get(occurrence - 1);
		}
		String amount = (species != null) ? this.rule.amounts().get(species) : null;
		return (species == null || amount == null) ? this.wordings.get(0)
				: this.bySpecies.computeIfAbsent(species, (one) -> Wording.of(withAmount(amount)));
	}

	/** The words with an amount that was worked out. */
	Wording wording(String amount) {
		return Wording.of(withAmount(amount));
	}

	private TaskText withAmount(String amount) {
		TaskText text = this.rule.text();
		return new TaskText(text.title(), text.what(), amount, text.why(), text.otherwise(), text.caution());
	}

}
