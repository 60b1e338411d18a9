package org.leafward.lookalikes.key;

import java.time.Month;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Work;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Hosts;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.Kind;
import org.leafward.lookalikes.core.Reference;
import org.leafward.lookalikes.core.Remedy;
import org.leafward.lookalikes.core.Sample;
import org.leafward.lookalikes.core.Span;
import org.leafward.lookalikes.core.Trust;

/** Turns causes as written into causes, and complains about names that nobody knows. */
final class CauseReader {

	private final KnownNames known;

	private final Set<String> evidences;

	private final Key.Scale scale;

	private final Complaints complaints;

	CauseReader(KnownNames known, Set<String> evidences, Key.Scale scale, Complaints complaints) {
		this.known = known;
		this.evidences = evidences;
		this.scale = scale;
		this.complaints = complaints;
	}

	Cause read(KeyDraft.CauseDraft draft, String path) {
		return new Cause(draft.id(), draft.name(), constant(Kind.values(), Kind::code, draft.kind()),
				isTrue(draft.laboratory()), isTrue(draft.regulated()), draft.share(), draft.tells(), draft.confirm(),
				sample(draft.sample()), remedies(draft, path), draft.outlook(), hosts(draft.hosts(), path + "/hosts"),
				chances(draft, path), draft.sources().stream().map(CauseReader::reference).toList());
	}

	private Map<String, Double> chances(KeyDraft.CauseDraft draft, String path) {
		Map<String, Double> chances = new HashMap<>();
		put(chances, draft.typical(), this.scale.typical(), path + "/typical");
		put(chances, draft.possible(), this.scale.possible(), path + "/possible");
		put(chances, draft.unlikely(), this.scale.unlikely(), path + "/unlikely");
		if (draft.weights() != null) {
			draft.weights().forEach((evidence, chance) -> {
				checkEvidence(evidence, path + "/weights/" + evidence);
				chances.put(evidence, chance);
			});
		}
		return chances;
	}

	private void put(Map<String, Double> chances, @Nullable List<String> named, double chance, String path) {
		List<String> list = orEmpty(named);
		for (int i = 0; i < list.size(); i++) {
			checkEvidence(list.get(i), path + "/" + i);
			if (chances.put(list.get(i), chance) != null) {
				this.complaints.add(path + "/" + i, "'%s' stands under two words".formatted(list.get(i)),
						"keep one of typical, possible and unlikely");
			}
		}
	}

	private void checkEvidence(String evidence, String path) {
		if (!this.evidences.contains(evidence)) {
			this.complaints.add(path, "no question has the answer '%s'".formatted(evidence),
					"write the id of an answer, such as leaf-edge-inward, or add the answer to a question");
		}
	}

	private Hosts hosts(KeyDraft.@Nullable HostsDraft draft, String path) {
		if (draft == null) {
			return Hosts.ANY;
		}
		String trouble = (draft.trouble() != null) ? draft.trouble() : "";
		if (!trouble.isEmpty() && !this.known.troubles().contains(trouble)) {
			this.complaints.add(path + "/trouble", "the catalogue has no trouble '%s'".formatted(trouble),
					"write one of those in config/plants/troubles.yaml, or leave it out");
		}
		plants(draft.only(), path + "/only");
		plants(draft.never(), path + "/never");
		for (String trait : orEmpty(draft.carries())) {
			if (!this.known.traits().contains(trait)) {
				this.complaints.add(path + "/carries", "the catalogue has no trait '%s'".formatted(trait),
						"write one of those in config/plants/groups-and-traits.yaml");
			}
		}
		return new Hosts(trouble, orEmpty(draft.only()), orEmpty(draft.never()), Set.copyOf(orEmpty(draft.carries())));
	}

	/** A genus that the catalogue doesn't grow yet is no mistake; a group is. */
	private void plants(@Nullable List<String> names, String path) {
		for (String name : orEmpty(names)) {
			if (!Character.isUpperCase(name.charAt(0)) && !this.known.groups().contains(name)) {
				this.complaints.add(path, "the catalogue has no plant group '%s'".formatted(name),
						"write a group of config/plants/groups-and-traits.yaml, or a genus with a capital");
			}
		}
	}

	private List<Remedy> remedies(KeyDraft.CauseDraft draft, String path) {
		Set<String> ids = new HashSet<>();
		for (int i = 0; i < draft.remedies().size(); i++) {
			KeyDraft.RemedyDraft remedy = draft.remedies().get(i);
			String at = path + "/remedies/" + i;
			if (!ids.add(remedy.id())) {
				this.complaints.add(at + "/id", "the cause already has a remedy '%s'".formatted(remedy.id()),
						"give this one an id of its own");
			}
			if (remedy.span().to() < remedy.span().from()) {
				this.complaints.add(at + "/span", "it ends before it begins", "write the earlier day as 'from'");
			}
			if (remedy.rule() != null && !this.known.rules().test(remedy.rule())) {
				this.complaints.add(at + "/rule", "there is no care rule '%s'".formatted(remedy.rule()),
						"write pack and rule, such as salt/leach-salt, or leave it out");
			}
		}
		return draft.remedies().stream().map(CauseReader::remedy).toList();
	}

	private static Remedy remedy(KeyDraft.RemedyDraft draft) {
		Span.Anchor anchor = constant(Span.Anchor.values(), Span.Anchor::code, draft.span().anchor());
		return new Remedy(draft.id(), draft.title(), constant(Work.values(), Work::code, draft.work()), draft.text(),
				isTrue(draft.holdOff()),
				new Span(anchor, draft.span().from(), Math.max(draft.span().from(), draft.span().to())), draft.rule(),
				draft.caution());
	}

	private static @Nullable Sample sample(KeyDraft.@Nullable SampleDraft draft) {
		return (draft == null) ? null : new Sample(draft.what(), draft.when(),
				orEmpty(draft.months()).stream().map(Month::of).toList(), draft.packing());
	}

	private static Reference reference(KeyDraft.SourceDraft draft) {
		return new Reference(draft.title(), draft.publisher(), draft.address(),
				constant(Trust.values(), Trust::code, draft.trust()));
	}

	/** The schema allows no other code. */
	private static <E> E constant(E[] constants, Function<E, String> code, String written) {
		return Arrays.stream(constants).filter((one) -> code.apply(one).equals(written)).findFirst().orElseThrow();
	}

	private static boolean isTrue(@Nullable Boolean written) {
		return Boolean.TRUE.equals(written);
	}

	static <T> List<T> orEmpty(@Nullable List<T> list) {
		return (list != null) ? list : List.of();
	}

}
