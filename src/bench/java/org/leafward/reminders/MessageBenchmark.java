package org.leafward.reminders;

import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.leafward.accounts.Person;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.care.garden.GardenTasks;
import org.leafward.care.pack.SpokenPacks;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.ReminderItem;
import org.leafward.reminders.words.FakeLinks;
import org.leafward.reminders.words.MessageWords;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A mail of twenty tasks in all its forms. Target: under 300 microseconds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MessageBenchmark {

	private static final int TASKS = 20;

	/** Language and units of the reader. */
	@Param({ "en-both", "en-us", "es-metric" })
	public String speech;

	private final MessageWords words = new MessageWords(new KnowledgeFiles(""), new KnowledgeReader(),
			SpokenPacks.books(GardenTasks.packs()), "");

	private final Content content = content();

	private static Content content() {
		List<CareTask> tasks = GardenTasks.of("kitchen-garden")
			.stream()
			.filter((task) -> task.state() == TaskState.PLANNED)
			.limit(TASKS)
			.toList();
		List<ReminderItem> items = tasks.stream()
			.map((task) -> new ReminderItem(new UUID(1, tasks.indexOf(task)), Topic.TO_DO, task, 14,
					task.window().from()))
			.toList();
		return new Content(new Person(GardenTasks.PERSON, "Ada", "ada@example.org", ZoneId.of("America/Chicago")),
				Wishes.MAIL, Series.MORNING, items, null);
	}

	@Benchmark
	public MessageText write() {
		String[] parts = this.speech.split("-");
		return this.words.write(this.content,
				new Speech(Language.of("language", parts[0]), Units.of("units", parts[1])), new FakeLinks());
	}

}
