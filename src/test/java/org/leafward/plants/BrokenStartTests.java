package org.leafward.plants;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.knowledge.BrokenKnowledge;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

/** The knowledge and the catalogue alone, started the way the server starts. */
@ExtendWith(OutputCaptureExtension.class)
class BrokenStartTests {

	@TempDir
	Path folder;

	@Configuration(proxyBeanMethods = false)
	@ComponentScan(basePackages = { "org.leafward.knowledge", "org.leafward.plants" })
	static class KnowledgeAlone {

	}

	private ConfigurableApplicationContext start() {
		SpringApplication application = new SpringApplication(KnowledgeAlone.class);
		application.setWebApplicationType(WebApplicationType.NONE);
		return application.run("--leafward.knowledge.directory=" + this.folder);
	}

	@Test
	void aBrokenFileStopsTheStartAndIsExplained(CapturedOutput output) throws IOException {
		Path plants = Files.createDirectories(this.folder.resolve("plants"));
		Files.writeString(plants.resolve("fruit.yaml"),
				"title: Fruit\nspecies:\n  - {name: Malus domestica, groups: [fruit-tree]}\n");
		Throwable failure = catchThrowable(this::start);
		assertThat(failure).hasRootCauseInstanceOf(BrokenKnowledge.class);
		assertThat(output).contains("APPLICATION FAILED TO START")
			.contains("plants/fruit.yaml:3:5: 'common' is missing; add 'common': the usual English name");
	}

	@Test
	void anOperatorsFileReplacesTheOneInTheJar() throws IOException {
		Path plants = Files.createDirectories(this.folder.resolve("plants"));
		Files.writeString(plants.resolve("fruit.yaml"),
				"title: Fruit\nspecies:\n  - {name: Cydonia oblonga, common: quince, groups: [fruit-tree, woody]}\n");
		try (ConfigurableApplicationContext context = start()) {
			Catalogue catalogue = context.getBean(Catalogue.class);
			assertThat(catalogue.search("quince", 5)).extracting((one) -> one.id().value()).contains("cydonia-oblonga");
			assertThat(catalogue.search("Malus domestica", 5)).isEmpty();
		}
	}

}
