package org.leafward.care.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.care.core.phase.LoggedEvent;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

/** Phases and events as they are read from files. */
class PhenologyTests {

	private static final Path FOLDER = Path.of("src/test/resources/phenology");

	private static final Species OAK = PlantsFixture.SPECIES.get(2);

	private static final Species BOXWOOD = PlantsFixture.SPECIES.get(0);

	private static Phenology read(Path... paths) throws IOException {
		List<KnowledgeFile> files = new ArrayList<>();
		for (Path path : paths) {
			files.add(new KnowledgeFile("phenology/" + path.getFileName(), Files.readAllBytes(path)));
		}
		return new PhenologyReader(new KnowledgeReader(), PlantsFixture.KNOWN).read(files);
	}

	static List<Path> broken() throws IOException {
		try (Stream<Path> files = Files.list(FOLDER.resolve("invalid"))) {
			return files.sorted().toList();
		}
	}

	@Test
	void theFirstEstimateThatFitsAPlantCounts() throws IOException {
		Phenology phenology = read(FOLDER.resolve("valid/phases.yaml"));
		assertThat(phenology.phases()).extracting(Phase::name).containsExactly("bud-break", "full-leaf", "leaf-drop");
		assertThat(phenology.events()).extracting(LoggedEvent::name).containsExactly("wound");
		assertThat(phenology.estimate("bud-break", OAK).orElseThrow().words()).contains("degree-days above 50 °F");
		assertThat(phenology.estimate("bud-break", BOXWOOD)).get()
			.isInstanceOfSatisfying(MarkerAnchor.class,
					(anchor) -> assertThat(anchor.days().of(BOXWOOD.id())).isEqualTo(-10));
		assertThat(phenology.estimate("full-leaf", OAK)).get()
			.isInstanceOfSatisfying(PhaseAnchor.class, (anchor) -> assertThat(anchor.phase()).isEqualTo("bud-break"));
		assertThat(phenology.phase("full-leaf").orElseThrow().lookFor()).isEqualTo("Leaves have their full size.");
	}

	@Test
	void aPhaseIsNotEstimatedForPlantsThatNoEntryFits() throws IOException {
		Phenology phenology = read(FOLDER.resolve("valid/phases.yaml"));
		assertThat(phenology.estimate("leaf-drop", OAK)).isPresent();
		assertThat(phenology.estimate("leaf-drop", BOXWOOD)).isEmpty();
		assertThat(phenology.estimate("no-such-phase", OAK)).isEmpty();
		assertThat(phenology.event("no-such-event")).isEmpty();
		assertThat(read()).isEqualTo(Phenology.NONE);
	}

	@Test
	void theSamePhaseInAnotherFileIsRefused() throws IOException {
		Path path = FOLDER.resolve("valid/phases.yaml");
		BrokenKnowledge broken = catchThrowableOfType(BrokenKnowledge.class, () -> read(path, path));
		assertThat(broken.problems()).hasSize(4)
			.anySatisfy((problem) -> assertThat(problem.what()).isEqualTo("there already is a phase 'bud-break'"))
			.anySatisfy((problem) -> assertThat(problem.what()).isEqualTo("there already is an event 'wound'"));
	}

	@ParameterizedTest
	@MethodSource("broken")
	void tellsEachProblemAtItsPlace(Path path) throws IOException {
		BrokenKnowledge broken = catchThrowableOfType(BrokenKnowledge.class, () -> read(path));
		assertThat(broken).as("problems of %s", path.getFileName()).isNotNull();
		ExpectedProblems.of(path).assertToldBy(broken.problems());
	}

	@Test
	void rulesHangOnPhasesThatThereAre() {
		KnownPhases known = KnownPhases
			.of(new Phenology(List.of(new Phase("bud-break", "bud break", "Look.", List.of())),
					List.of(new LoggedEvent("wound", "a wound"))));
		assertThat(known).isEqualTo(new KnownPhases(Set.of("bud-break"), Set.of("wound")));
	}

}
