package org.leafward.lookalikes.key;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the columns and rows of the trade's table are called in the key. */
final class EvidenceNames {

	static final Map<String, String> BY_COLUMN = new LinkedHashMap<>();

	/** In the order of the table's rows. */
	static final List<String> CAUSES = List.of("winter-burn", "summer-scorch", "leaf-sunscald", "trunk-injury",
			"bacterial-scorch", "oak-wilt", "anthracnose", "verticillium-wilt", "root-rot", "herbicide-drift",
			"chlorosis", "potassium-shortage", "fertilizer-burn", "soil-salt", "salt-spray", "spider-mites",
			"lace-bugs", "late-frost", "low-temperature", "boxwood-blight", "dutch-elm-disease", "root-loss",
			"natural-shedding");

	static {
		BY_COLUMN.put("season_late_winter_early_spring", "seen-late-winter");
		BY_COLUMN.put("season_leafout_spring", "seen-leafing-out");
		BY_COLUMN.put("season_early_summer", "seen-early-summer");
		BY_COLUMN.put("season_mid_late_summer", "seen-high-summer");
		BY_COLUMN.put("season_autumn", "seen-autumn");
		BY_COLUMN.put("onset_hours_to_days", "came-within-days");
		BY_COLUMN.put("onset_weeks", "came-over-weeks");
		BY_COLUMN.put("onset_seasons_to_years", "came-over-years");
		BY_COLUMN.put("leaf_margin_inward", "leaf-edge-inward");
		BY_COLUMN.put("leaf_tip_burn", "leaf-tips-burnt");
		BY_COLUMN.put("leaf_interveinal_brown", "leaf-brown-between-veins");
		BY_COLUMN.put("leaf_interveinal_yellow_green_veins", "leaf-yellow-between-veins");
		BY_COLUMN.put("leaf_along_veins_brown", "leaf-brown-along-veins");
		BY_COLUMN.put("leaf_discrete_spots", "leaf-spots");
		BY_COLUMN.put("leaf_bleached_patch_upper_face", "leaf-bleached");
		BY_COLUMN.put("leaf_fine_stipple", "leaf-fine-dots");
		BY_COLUMN.put("leaf_cupped_twisted", "leaf-twisted");
		BY_COLUMN.put("leaf_wilt_whole", "leaf-limp");
		BY_COLUMN.put("border_yellow_halo", "border-yellow");
		BY_COLUMN.put("border_reddish_brown_band", "border-red-brown");
		BY_COLUMN.put("border_sharp_no_band", "border-sharp");
		BY_COLUMN.put("border_diffuse", "border-fading");
		BY_COLUMN.put("crown_whole_plant", "crown-whole");
		BY_COLUMN.put("crown_one_side_windward_or_south", "crown-windy-or-sunny-side");
		BY_COLUMN.put("crown_side_facing_road", "crown-road-side");
		BY_COLUMN.put("crown_upper_or_sunlit_leaves", "crown-sunlit");
		BY_COLUMN.put("crown_lower_inner", "crown-low-and-inside");
		BY_COLUMN.put("crown_single_branch_then_more_each_year", "crown-branch-then-more");
		BY_COLUMN.put("crown_scattered_random_branches", "crown-scattered");
		BY_COLUMN.put("crown_only_above_snow_line", "crown-above-snow");
		BY_COLUMN.put("crown_top_down_within_weeks", "crown-top-down-fast");
		BY_COLUMN.put("trunk_southwest_bark_dead_or_split", "bark-dead-on-sunny-side");
		BY_COLUMN.put("age_older_leaves_first", "oldest-leaves-first");
		BY_COLUMN.put("age_newest_leaves_first", "youngest-leaves-first");
		BY_COLUMN.put("age_all_leaves_alike", "all-leaves-alike");
		BY_COLUMN.put("host_broadleaf_evergreen", "plant-broadleaf-evergreen");
		BY_COLUMN.put("host_needled_evergreen", "plant-needled-evergreen");
		BY_COLUMN.put("host_oak", "plant-oak");
		BY_COLUMN.put("host_maple", "plant-maple");
		BY_COLUMN.put("host_elm_sycamore_mulberry_sweetgum", "plant-elm-and-kin");
		BY_COLUMN.put("host_shade_loving_plant", "plant-shade-loving");
		BY_COLUMN.put("host_houseplant_or_seedling", "plant-potted-or-seedling");
		BY_COLUMN.put("host_several_unrelated_species_together", "other-kinds-too");
		BY_COLUMN.put("event_drought", "after-drought");
		BY_COLUMN.put("event_hot_dry_wind", "after-hot-dry-wind");
		BY_COLUMN.put("event_cold_dry_wind_frozen_soil", "after-cold-wind-frozen-ground");
		BY_COLUMN.put("event_pruned_or_fed_late_summer", "cut-or-fed-late");
		BY_COLUMN.put("event_moved_outdoors_or_lost_shade", "moved-to-more-light");
		BY_COLUMN.put("event_deicing_salt_nearby", "salt-near");
		BY_COLUMN.put("event_heavy_fertiliser", "fed-heavily");
		BY_COLUMN.put("event_transplanted_within_3_years", "transplanted-lately");
		BY_COLUMN.put("event_construction_or_root_cutting", "roots-cut-or-built-near");
		BY_COLUMN.put("event_wet_or_poorly_drained_soil", "ground-wet");
		BY_COLUMN.put("event_cool_wet_spring", "after-cool-wet-spring");
		BY_COLUMN.put("event_freeze_after_growth_began", "after-freeze-on-growth");
		BY_COLUMN.put("event_herbicide_used_within_300_ft", "herbicide-near");
		BY_COLUMN.put("event_soil_pH_above_7", "soil-limy");
		BY_COLUMN.put("event_wounded_april_to_july", "wounded-april-to-july");
		BY_COLUMN.put("recurs_every_year_and_spreads", "every-year-and-more");
		BY_COLUMN.put("recurs_only_with_same_weather", "again-with-weather");
		BY_COLUMN.put("does_not_recur", "not-again");
		BY_COLUMN.put("watering_improves", "water-helps");
		BY_COLUMN.put("watering_no_change", "water-no-change");
		BY_COLUMN.put("watering_makes_worse", "water-makes-worse");
		BY_COLUMN.put("webbing_present", "webs");
		BY_COLUMN.put("live_mites_or_lacebugs_on_tap_test", "mites-or-lace-bugs");
		BY_COLUMN.put("wood_streaking_under_bark", "streaks-under-bark");
		BY_COLUMN.put("buds_alive_when_cut", "buds-alive");
		BY_COLUMN.put("leaves_drop_fast", "leaves-fall-fast");
		BY_COLUMN.put("leaves_hang_on", "leaves-hang-on");
	}

	private EvidenceNames() {
	}

}
