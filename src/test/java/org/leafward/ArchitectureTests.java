package org.leafward;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import jakarta.persistence.Table;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.Random;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

/** What no package may do, whatever module it belongs to. */
@AnalyzeClasses(packages = "org.leafward", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTests {

	@ArchTest
	static final ArchRule coreIsPure = noClasses().that()
		.resideInAnyPackage("..core..", "org.leafward.measure..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.springframework.boot..", "org.springframework.jdbc..", "org.springframework.web..",
				"org.springframework.stereotype..", "org.springframework.transaction..",
				"org.springframework.context..", "jakarta..", "tools.jackson..", "com.fasterxml..", "org.slf4j..",
				"java.sql..", "javax.sql..", "org.quartz..", "net.fortuna..")
		.orShould()
		.dependOnClassesThat()
		.areAssignableTo(Clock.class)
		.orShould()
		.dependOnClassesThat()
		.areAssignableTo(Random.class);

	@ArchTest
	static final ArchRule amountsArePure = noClasses().that()
		.resideInAPackage("org.leafward.amounts..")
		.and()
		.resideOutsideOfPackages("org.leafward.amounts.web..", "org.leafward.amounts.limits..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.springframework.boot..", "org.springframework.jdbc..", "org.springframework.web..",
				"org.springframework.stereotype..", "org.springframework.transaction..",
				"org.springframework.context..", "jakarta..", "tools.jackson..", "java.sql..", "org.slf4j..")
		.orShould()
		.dependOnClassesThat()
		.areAssignableTo(Clock.class)
		.orShould()
		.dependOnClassesThat()
		.areAssignableTo(Random.class);

	@ArchTest
	static final ArchRule coreKnowsNoShell = noClasses().that()
		.resideInAPackage("..core..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("..store..", "..web..", "..job..", "..on..");

	@ArchTest
	static final ArchRule pagesSeeNoTables = noClasses().that()
		.resideInAPackage("..web..")
		.should()
		.dependOnClassesThat()
		.resideInAPackage("..store..");

	@ArchTest
	static final ArchRule onlyTheClockTellsTheTime = noClasses().that()
		.resideOutsideOfPackage("org.leafward.platform.time..")
		.should()
		.callMethod(Instant.class, "now")
		.orShould()
		.callMethod(LocalDate.class, "now")
		.orShould()
		.callMethod(LocalDateTime.class, "now")
		.orShould()
		.callMethod(ZonedDateTime.class, "now")
		.orShould()
		.callMethod(OffsetDateTime.class, "now")
		.orShould()
		.callMethod(System.class, "currentTimeMillis")
		.orShould()
		.callMethod(Clock.class, "systemUTC")
		.orShould()
		.callMethod(Clock.class, "systemDefaultZone");

	@ArchTest
	static final ArchRule noOldDates = noClasses().that()
		.resideOutsideOfPackages("org.leafward.reminders.channel.mail..")
		.should()
		.dependOnClassesThat()
		.areAssignableTo(Date.class);

	@ArchTest
	static final ArchRule onlyJackson3 = noClasses().should()
		.dependOnClassesThat()
		.resideInAnyPackage("com.fasterxml.jackson.databind..", "com.fasterxml.jackson.core..");

	/**
	 * One for invitations and what all calendars share, one above it for subscribed
	 * documents, which count revisions that nobody else needs.
	 */
	@ArchTest
	static final ArchRule twoPackagesSeeIcal4j = noClasses().that()
		.resideOutsideOfPackages("org.leafward.calendars..", "org.leafward.feeds.ical..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("net.fortuna.ical4j..");

	@ArchTest
	static final ArchRule onePackageSeesTheSchemaValidatorAndYaml = noClasses().that()
		.resideOutsideOfPackage("org.leafward.knowledge.yaml..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("com.networknt..", "tools.jackson.dataformat.yaml..");

	@ArchTest
	static final ArchRule onePackageSeesTheParserOfHtml = noClasses().that()
		.resideOutsideOfPackage("org.leafward.spoken.html..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.jsoup..");

	@ArchTest
	static final ArchRule onePackageSeesEmbeddedPostgres = noClasses().that()
		.resideOutsideOfPackage("org.leafward.platform.database..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("io.zonky..");

	@ArchTest
	static final ArchRule onePackageSeesTheSolver = noClasses().that()
		.resideOutsideOfPackage("org.leafward.workdays.solver..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("ai.timefold..");

	@ArchTest
	static final ArchRule onePackageSeesMail = noClasses().that()
		.resideOutsideOfPackage("org.leafward.reminders.channel.mail..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("jakarta.mail..", "org.springframework.mail..");

	/**
	 * It is plain computation, so it may be used in the core; the rest asks SunPosition.
	 */
	@ArchTest
	static final ArchRule onePackageSeesTheSolarLibrary = noClasses().that()
		.resideOutsideOfPackage("org.leafward.climate.core.light..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.shredzone..");

	/** Plain computation too, so it may be used in the core. */
	@ArchTest
	static final ArchRule onePackageSeesTheDistributions = noClasses().that()
		.resideOutsideOfPackage("org.leafward.climate.core.drought..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.apache.commons.statistics..");

	@ArchTest
	static final ArchRule onePackageSeesTheTables = noClasses().that()
		.resideOutsideOfPackage("org.leafward.measure")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.apache.commons.csv..");

	@ArchTest
	static final ArchRule onePackageSeesTheBuckets = noClasses().that()
		.resideOutsideOfPackage("org.leafward.accounts.web..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("io.github.bucket4j..");

	@ArchTest
	static final ArchRule onePackageSeesTheQrEncoder = noClasses().that()
		.resideOutsideOfPackage("org.leafward.quick.qr..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("io.nayuki..");

	@ArchTest
	static final ArchRule onePackageSeesThePdfLibrary = noClasses().that()
		.resideOutsideOfPackage("org.leafward.pages.print..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.fontbox..",
				"org.apache.xmpbox..");

	@ArchTest
	static final ArchRule onePackageSeesTheOtherHttpClient = noClasses().that()
		.resideOutsideOfPackage("org.leafward.platform.http..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.apache.hc..");

	@ArchTest
	static final ArchRule quartzStaysInJobs = noClasses().that()
		.resideOutsideOfPackages("..job..", "org.leafward.platform..")
		.should()
		.dependOnClassesThat()
		.resideInAnyPackage("org.quartz..");

	@ArchTest
	static final ArchRule tablesLieInTheSchemaOfTheirModule = classes().that()
		.areAnnotatedWith(Table.class)
		.should(new ArchCondition<JavaClass>("name the schema of their module") {

			@Override
			public void check(JavaClass type, ConditionEvents events) {
				String module = type.getPackageName().split("\\.")[2];
				String schema = type.getAnnotationOfType(Table.class).schema();
				events.add(new SimpleConditionEvent(type, module.equals(schema),
						"%s lies in schema '%s'".formatted(type.getName(), schema)));
			}

		});

	@ArchTest
	static final ArchRule nothingPrintsToTheConsole = noClasses().should()
		.accessField(System.class, "out")
		.orShould()
		.accessField(System.class, "err");

}
