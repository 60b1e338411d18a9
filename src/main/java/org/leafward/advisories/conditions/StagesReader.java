package org.leafward.advisories.conditions;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.watch.Stages;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.Catalogue;
import org.leafward.plants.SpeciesId;

/** Reads stages of buds and the temperatures that kill them. */
final class StagesReader {

	private final CriterionReader criteria;

	private final Catalogue catalogue;

	private final Complaints complaints;

	StagesReader(CriterionReader criteria, Catalogue catalogue, Complaints complaints) {
		this.criteria = criteria;
		this.catalogue = catalogue;
		this.complaints = complaints;
	}

	@Nullable Stages read(ConditionDraft.StagesDraft draft, String path) {
		TemperatureThreshold base = this.criteria.base(draft.base(), path + "/base");
		MonthDay start = this.criteria.day(draft.start(), path + "/start");
		if (base != null && !base.fahrenheit()) {
			this.complaints.add(path + "/base", "the base is in °C", "sums of stages are degree-days of Fahrenheit");
		}
		List<Stages.Crop> crops = new ArrayList<>();
		for (int i = 0; i < draft.crops().size(); i++) {
			crops.add(crop(draft.crops().get(i), path + "/crops/" + i));
		}
		return (base != null && start != null) ? new Stages(base, start, crops) : null;
	}

	private Stages.Crop crop(ConditionDraft.CropDraft draft, String path) {
		for (int i = 0; i < draft.species().size(); i++) {
			if (this.catalogue.find(new SpeciesId(draft.species().get(i))).isEmpty()) {
				this.complaints.add(path + "/species/" + i,
						"there is no species '%s'".formatted(draft.species().get(i)), "take an id of the catalogue");
			}
		}
		List<Stages.Stage> stages = new ArrayList<>();
		for (int i = 0; i < draft.stages().size(); i++) {
			ConditionDraft.StageDraft stage = draft.stages().get(i);
			String at = path + "/stages/" + i;
			boolean last = i == draft.stages().size() - 1;
			Double tenth = stage.killsTenth();
			Double nine = stage.killsNine();
			boolean over = tenth == null && nine == null;
			if (over != last || (!over && (tenth == null || nine == null))) {
				this.complaints.add(at,
						last ? "the last stage has a temperature that kills"
								: "the stage lacks a temperature that kills",
						"give 'kills-tenth' and 'kills-nine' to all stages but the last, with which it is over");
			}
			else if (tenth != null && nine != null && tenth < nine) {
				this.complaints.add(at, "nine buds in ten are killed at a higher temperature than one in ten",
						"let 'kills-nine' be the lower of the two");
			}
			if (i > 0 && stage.sum() <= draft.stages().get(i - 1).sum()) {
				this.complaints.add(at + "/sum", "the sum is no higher than that of the stage before",
						"put the stages in their order");
			}
			stages.add(new Stages.Stage(ConditionReader.words(stage.name()), stage.sum(), (tenth != null) ? tenth : 0,
					(nine != null) ? nine : 0, over));
		}
		return new Stages.Crop(ConditionReader.words(draft.name()), new HashSet<>(draft.species()), stages);
	}

}
