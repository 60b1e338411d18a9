package org.leafward.care.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.phase.Estimate;
import org.leafward.care.core.phase.LoggedEvent;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.pack.PhenologyDraft.EstimateDraft;
import org.leafward.care.pack.PhenologyDraft.EventDraft;
import org.leafward.care.pack.PhenologyDraft.PhaseDraft;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;

/** Puts the files of config/phenology together. */
final class PhenologyReader {

	private static final String SCHEMA = "schema/phenology-1.json";

	private final KnowledgeReader reader;

	private final KnownPlants known;

	PhenologyReader(KnowledgeReader reader, KnownPlants known) {
		this.reader = reader;
		this.known = known;
	}

	/** A readable file and where to complain about it. */
	private record Sheet(PhenologyDraft draft, Complaints complaints) {

		List<PhaseDraft> phases() {
			return Objects.requireNonNullElse(this.draft.phases(), List.of());
		}

		List<EventDraft> events() {
			return Objects.requireNonNullElse(this.draft.events(), List.of());
		}

	}

	/**
	 * Reads the files.
	 * @param files all files of the kind
	 * @return the phases and events
	 * @throws BrokenKnowledge with every problem of every file
	 */
	Phenology read(List<KnowledgeFile> files) {
		List<Problem> problems = new ArrayList<>();
		List<Sheet> sheets = new ArrayList<>();
		for (KnowledgeFile file : files) {
			Reading<PhenologyDraft> reading = this.reader.read(file, SCHEMA, PhenologyDraft.class);
			problems.addAll(reading.problems());
			if (reading.value() != null) {
				sheets.add(new Sheet(reading.value(), new Complaints(reading.places())));
			}
		}
		// Names are only looked up once every file that may define them was readable.
		Phenology phenology = problems.isEmpty() ? read(sheets, problems) : Phenology.NONE;
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return phenology;
	}

	private Phenology read(List<Sheet> sheets, List<Problem> problems) {
		Set<String> names = new HashSet<>();
		Set<String> eventNames = new HashSet<>();
		for (Sheet sheet : sheets) {
			for (int i = 0; i < sheet.phases().size(); i++) {
				once(sheet.phases().get(i).phase(), names, sheet, "/phases/" + i + "/phase", "phase");
			}
			for (int i = 0; i < sheet.events().size(); i++) {
				once(sheet.events().get(i).event(), eventNames, sheet, "/events/" + i + "/event", "event");
			}
		}
		List<Phase> phases = new ArrayList<>();
		List<LoggedEvent> events = new ArrayList<>();
		Map<String, Set<String>> needs = needs(sheets);
		for (Sheet sheet : sheets) {
			for (int i = 0; i < sheet.phases().size(); i++) {
				phases.add(phase(sheet.phases().get(i), "/phases/" + i, names, needs, sheet.complaints()));
			}
			sheet.events().forEach((event) -> events.add(new LoggedEvent(event.event(), event.words())));
			problems.addAll(sheet.complaints().problems());
		}
		return new Phenology(phases, events);
	}

	private static void once(String name, Set<String> names, Sheet sheet, String path, String what) {
		if (!names.add(name)) {
			sheet.complaints()
				.add(path, "there already is %s %s '%s'".formatted(what.equals("event") ? "an" : "a", what, name),
						"give this one a name of its own, or put the two together");
		}
	}

	private static Map<String, Set<String>> needs(List<Sheet> sheets) {
		Map<String, Set<String>> needs = new HashMap<>();
		sheets.forEach((sheet) -> sheet.phases()
			.forEach((phase) -> phase.estimates().stream().map((estimate) -> estimate.at().phase()).forEach((other) -> {
				if (other != null) {
					needs.computeIfAbsent(phase.phase(), (name) -> new LinkedHashSet<>()).add(other);
				}
			})));
		return needs;
	}

	private Phase phase(PhaseDraft draft, String path, Set<String> names, Map<String, Set<String>> needs,
			Complaints complaints) {
		List<Estimate> estimates = new ArrayList<>();
		for (int i = 0; i < draft.estimates().size(); i++) {
			EstimateDraft written = draft.estimates().get(i);
			String place = path + "/estimates/" + i;
			if (written.at().event() != null) {
				complaints.add(place + "/at/event", "an estimate can't hang on what people log",
						"hang it on a marker, another phase or the planting date");
			}
			else if (written.at().phase() != null && reaches(written.at().phase(), draft.phase(), needs)) {
				complaints.add(place + "/at/phase", "the estimates of '%s' and '%s' hang on each other in a circle"
					.formatted(draft.phase(), written.at().phase()), "hang one of them on a marker");
			}
			else {
				Estimate estimate = estimate(written, place, names, complaints);
				if (estimate != null) {
					estimates.add(estimate);
				}
			}
		}
		return new Phase(draft.phase(), draft.words(), draft.lookFor(), estimates);
	}

	/** Whether one phase hangs on the other, directly or through others. */
	private static boolean reaches(String from, String wanted, Map<String, Set<String>> needs) {
		Set<String> seen = new LinkedHashSet<>(Set.of(from));
		List<String> open = new ArrayList<>(seen);
		while (!open.isEmpty()) {
			String next = open.remove(open.size() - 1);
			if (next.equals(wanted)) {
				return true;
			}
			needs.getOrDefault(next, Set.of()).stream().filter(seen::add).forEach(open::add);
		}
		return false;
	}

	private @Nullable Estimate estimate(EstimateDraft draft, String path, Set<String> names, Complaints complaints) {
		Concern concern = (draft.concerns() != null)
				? new ConcernReader(this.known, complaints).read(draft.concerns(), path + "/concerns")
				: Concern.ANY_PLANT;
		BySpecies bySpecies = new BySpecies(this.known, this.known.of(concern), complaints);
		Anchor at = new AnchorReader(complaints, new KnownPhases(names, Set.of()), bySpecies).read(draft.at(),
				path + "/at");
		return (at != null)
				? new Estimate(concern, at, new SourceReader(complaints).read(draft.sources(), path + "/sources"))
				: null;
	}

}
