package org.leafward.quick.web;

import java.util.List;
import java.util.Set;
import org.leafward.plants.Species;
import org.leafward.quick.core.PlantedWhen;

/**
 * A plant on the list.
 *
 * @param id its species
 * @param name its common name
 * @param botanical its botanical name
 * @param lasts whether it stands for years, so that its age matters
 * @param young whether it was planted lately
 */
record PlantRow(String id, String name, String botanical, boolean lasts, boolean young) {

	static List<PlantRow> of(List<Species> list, QuickForm form) {
		Set<String> young = Set.copyOf((form.young() != null) ? form.young() : List.of());
		return list.stream()
			.map((one) -> new PlantRow(one.id().value(), one.commonName(), one.botanicalName(),
					!PlantedWhen.lastsASeason(one) && one.groups().contains("woody"), young.contains(one.id().value())))
			.toList();
	}

}
