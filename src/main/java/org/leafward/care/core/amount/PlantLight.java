package org.leafward.care.core.amount;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.Aspect;
import org.leafward.amounts.light.EmergencyShade;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.MovingHouseplants;
import org.leafward.amounts.light.RampLimits;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.RampLight;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.BadInput;
import org.leafward.measure.Hemisphere;
import org.leafward.plants.Light;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.Raised;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.Sun;

/**
 * The ramps of light at a site.
 *
 * @param ground the site and its beds
 */
public record PlantLight(SiteBeds ground) {

	/**
	 * Lamps that nobody measured: fluorescent tubes a hand above the leaves, µmol/m²s;
	 * from memory, on the low side, so that the ramp starts gently.
	 */
	static final double USUAL_LAMPS = 100;

	/** Hours of lamps that nobody told; 14 to 16 are common practice. */
	static final double USUAL_HOURS = 14;

	/**
	 * A site without beds.
	 * @param site the site
	 */
	public PlantLight(Site site) {
		this(SiteBeds.none(site));
	}

	private Site site() {
		return this.ground.site();
	}

	/**
	 * The ramp of a planting.
	 * @param light what the rule says of it
	 * @param subject the planting
	 * @param first the first day outside
	 * @param days how many when none is held
	 * @return empty when there is no ramp, as in the polar night
	 */
	public Optional<HardeningRamp> ramp(RampLight light, Subject subject, LocalDate first, int days) {
		Planting planting = subject.planting();
		Species species = subject.species();
		TemperatureThreshold lowest = (species != null) ? light.lowestNight(species.id()) : null;
		if (planting == null || species == null || lowest == null) {
			return Optional.empty();
		}
		try {
			return Optional.of(HardeningRamp.plan(site().point(), site().zone(), first, days, start(planting.raised()),
					goal(planting, species), RampLimits.forNights(lowest.celsius())));
		}
		catch (BadInput ex) {
			// No day of the season has light, or the clock doesn't fit the place.
			return Optional.empty();
		}
	}

	/**
	 * The days of a ramp that no weather holds.
	 * @param light what the rule says of it
	 * @param subject the planting
	 * @param first the first day
	 * @param days how many
	 * @return empty when there is no ramp
	 */
	public List<Amount> steps(RampLight light, Subject subject, LocalDate first, int days) {
		Planting planting = subject.planting();
		Species species = subject.species();
		if (planting == null || species == null) {
			return List.of();
		}
		try {
			return switch (light.way()) {
				// Who lost a tree stands in the open now, whatever the site was before.
				case CLOTH -> EmergencyShade
					.plan(site().point(), first, days, liked(species.habits().light()), SiteLight.FULL_SUN)
					.stream()
					.map(EmergencyShade.Day::amount)
					.toList();
				case IN ->
					MovingHouseplants.in(site().point(), first, days, goal(planting, species), start(planting.raised()))
						.stream()
						.map(MovingHouseplants.DayIn::amount)
						.toList();
				case OUT -> List.of();
			};
		}
		catch (BadInput ex) {
			return List.of();
		}
	}

	private StartingLight start(@Nullable Raised raised) {
		if (raised == null) {
			return new StartingLight.Unknown();
		}
		boolean north = site().point().hemisphere() == Hemisphere.NORTH;
		return switch (raised.in()) {
			case MIDDAY_WINDOW -> new StartingLight.Windowsill(north ? Aspect.SOUTH : Aspect.NORTH);
			case SUNLESS_WINDOW -> new StartingLight.Windowsill(north ? Aspect.NORTH : Aspect.SOUTH);
			case MORNING_WINDOW -> new StartingLight.Windowsill(Aspect.EAST);
			case AFTERNOON_WINDOW -> new StartingLight.Windowsill(Aspect.WEST);
			case LAMPS -> new StartingLight.Lamp(Objects.requireNonNullElse(raised.micromoles(), USUAL_LAMPS),
					Objects.requireNonNullElse(raised.hours(), USUAL_HOURS));
			case GREENHOUSE -> StartingLight.UnderGlass.GLASSHOUSE;
		};
	}

	/**
	 * Seedlings go where they were planned; plants from indoors no brighter than they
	 * like.
	 */
	private SiteLight goal(Planting planting, Species species) {
		SiteLight here = switch (this.ground.around(planting).sun()) {
			case FULL_SUN -> SiteLight.FULL_SUN;
			case PART_SHADE -> SiteLight.PART_SHADE;
			case SHADE -> SiteLight.SHADE;
		};
		if (!planting.wintersIndoors()) {
			return here;
		}
		SiteLight liked = liked(species.habits().light());
		return (liked.share() < here.share()) ? liked : here;
	}

	private static SiteLight liked(@Nullable Light light) {
		if (light == null) {
			return SiteLight.SHADE;
		}
		return switch (light) {
			case FULL_SUN -> SiteLight.FULL_SUN;
			case SUN_TO_PART_SHADE, SUN_TO_SHADE -> SiteLight.PART_SUN;
			case PART_SHADE -> SiteLight.PART_SHADE;
			case SHADE -> SiteLight.SHADE;
		};
	}

}
