package org.leafward.knowledge;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.diagnostics.FailureAnalysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class KnowledgeFilesTests {

	@TempDir
	Path folder;

	@Test
	void findsTheFilesThatComeWithTheServer() {
		assertThat(new KnowledgeFiles("").of("rulepacks")).extracting(KnowledgeFile::name)
			.contains("rulepacks/evergreens.yaml", "rulepacks/houseplants.yaml")
			.isSorted();
		assertThat(new KnowledgeFiles("  ").of("nothing-of-the-kind")).isEmpty();
	}

	@Test
	void laysTheOperatorsFilesOverThem() throws IOException {
		Path own = Files.createDirectories(this.folder.resolve("rulepacks"));
		Files.writeString(own.resolve("evergreens.yaml"), "mine");
		Files.writeString(own.resolve("zz-extra.yaml"), "more");
		Files.writeString(own.resolve("notes.txt"), "not knowledge");
		List<KnowledgeFile> shipped = new KnowledgeFiles("").of("rulepacks");
		List<KnowledgeFile> files = new KnowledgeFiles(this.folder.toString()).of("rulepacks");
		assertThat(files).hasSize(shipped.size() + 1);
		assertThat(files).filteredOn((file) -> file.name().equals("rulepacks/evergreens.yaml"))
			.singleElement()
			.satisfies((file) -> assertThat(new String(file.content(), StandardCharsets.UTF_8)).isEqualTo("mine"));
		assertThat(files).extracting(KnowledgeFile::name).endsWith("rulepacks/zz-extra.yaml");
	}

	@Test
	void aFolderWithoutTheKindChangesNothing() {
		assertThat(new KnowledgeFiles(this.folder.toString()).of("plants"))
			.hasSameSizeAs(new KnowledgeFiles("").of("plants"));
	}

	@Test
	void readsNoMoreOfALargeFileThanIsNeededToRefuseIt() throws IOException {
		Path own = Files.createDirectories(this.folder.resolve("plants"));
		Files.write(own.resolve("big.yaml"), new byte[3 * 1024 * 1024]);
		assertThat(new KnowledgeFiles(this.folder.toString()).of("plants"))
			.filteredOn((file) -> file.name().equals("plants/big.yaml"))
			.singleElement()
			.satisfies((file) -> assertThat(file.content()).hasSize(KnowledgeFile.LARGEST + 1));
	}

	@Test
	void aFolderThatIsNotThereIsAProblem() {
		String absent = this.folder.resolve("absent").toString();
		assertThatExceptionOfType(BrokenKnowledge.class).isThrownBy(() -> new KnowledgeFiles(absent).of("plants"))
			.withMessageContaining("there is no such folder");
	}

	@Test
	void aFailedStartListsTheProblems() {
		BrokenKnowledge broken = new BrokenKnowledge(
				List.of(new Problem("rulepacks/a.yaml", 3, 5, "/rules", "this is wrong", "write that"),
						new Problem("plants/b.yaml", 0, 0, "", "the file is empty", "remove it")));
		FailureAnalysis analysis = new BrokenKnowledgeAnalyzer().analyze(broken);
		assertThat(analysis.getDescription()).contains(" - rulepacks/a.yaml:3:5: this is wrong; write that")
			.contains(" - plants/b.yaml: the file is empty; remove it");
		assertThat(analysis.getAction()).contains("leafward.knowledge.directory");
	}

}
