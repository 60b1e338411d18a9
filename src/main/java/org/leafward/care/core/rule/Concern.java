package org.leafward.care.core.rule;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

/**
 * Which plantings a rule is for.
 *
 * @param groups any of these plant groups
 * @param species or any of these species; with no group and no species, every species
 * @param traits and all of these traits
 * @param exceptGroups but none of these groups
 * @param exceptSpecies and none of these species
 * @param placement only so placed; null is either
 * @param wintersIndoors only such that are kept indoors in winter, or that are not; null
 * is either
 * @param saltExposed only such that de-icing salt reaches, or that it doesn't; null is
 * either
 * @param years age of the planting
 * @param soils only on these textures; empty is any
 * @param where only there
 * @param site the features that a site has, for rules about a site as a whole; empty for
 * rules about plantings
 * @param freezing only where it freezes so; null is anywhere
 */
public record Concern(Set<String> groups, Set<SpeciesId> species, Set<String> traits, Set<String> exceptGroups,
		Set<SpeciesId> exceptSpecies, @Nullable Placement placement, @Nullable Boolean wintersIndoors,
		@Nullable Boolean saltExposed, YearsSincePlanting years, Set<SoilTexture> soils, Where where,
		Set<SiteFeature> site, @Nullable Freezing freezing) {

	/** Every planting. */
	public static final Concern ANY_PLANT = Concern.of(Set.of(), Set.of(), Set.of());

	public Concern {
		groups = Set.copyOf(groups);
		species = Set.copyOf(species);
		traits = Set.copyOf(traits);
		exceptGroups = Set.copyOf(exceptGroups);
		exceptSpecies = Set.copyOf(exceptSpecies);
		soils = Set.copyOf(soils);
		site = Set.copyOf(site);
	}

	/**
	 * Plantings by what they are alone.
	 * @param groups any of these plant groups
	 * @param species or any of these species
	 * @param traits and all of these traits
	 * @return the concern
	 */
	public static Concern of(Set<String> groups, Set<SpeciesId> species, Set<String> traits) {
		return new Concern(groups, species, traits, Set.of(), Set.of(), null, null, null, YearsSincePlanting.ANY,
				Set.of(), Where.ANYWHERE, Set.of(), null);
	}

	/**
	 * Whether a rule with this concern is for a planting.
	 * @param plant what is known of the planting in the season asked about
	 * @return true when every condition holds
	 */
	public boolean appliesTo(PlantFacts plant) {
		return addresses(plant.species(), plant.groups(), plant.traits())
				&& (this.placement == null || this.placement == plant.placement())
				&& (this.wintersIndoors == null || this.wintersIndoors == plant.wintersIndoors())
				&& (this.saltExposed == null || this.saltExposed == plant.saltExposed())
				&& this.years.contains(plant.yearsSincePlanting()) && fits(plant.ground());
	}

	/**
	 * Whether a rule with this concern can be for plantings of a species.
	 * @param plant the species
	 * @return true when its groups, traits and exceptions fit
	 */
	public boolean addresses(Species plant) {
		return addresses(plant.id(), plant.groups(), plant.traits());
	}

	private boolean addresses(SpeciesId id, Collection<String> itsGroups, Set<String> itsTraits) {
		return this.site.isEmpty() && named(id, itsGroups) && itsTraits.containsAll(this.traits)
				&& Collections.disjoint(this.exceptGroups, itsGroups) && !this.exceptSpecies.contains(id);
	}

	/**
	 * Whether a rule with this concern is for a site as a whole.
	 * @param ground the site
	 * @return true when every condition holds
	 */
	public boolean appliesTo(SiteFacts ground) {
		return !this.site.isEmpty() && ground.features().containsAll(this.site) && fits(ground);
	}

	private boolean fits(SiteFacts ground) {
		return (this.soils.isEmpty() || this.soils.contains(ground.soil()))
				&& this.where.contains(ground.region(), ground.county());
	}

	private boolean named(SpeciesId id, Collection<String> itsGroups) {
		return (this.groups.isEmpty() && this.species.isEmpty()) || !Collections.disjoint(this.groups, itsGroups)
				|| this.species.contains(id);
	}

}
