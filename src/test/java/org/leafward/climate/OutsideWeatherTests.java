package org.leafward.climate;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.leafward.measure.GeoPoint;
import org.leafward.support.LocalServer;
import org.leafward.support.TestDatabase;
import org.quartz.JobDataMap;
import org.quartz.JobExecutionContext;
import org.quartz.JobExecutionException;
import org.quartz.JobKey;
import org.quartz.Scheduler;
import org.quartz.TriggerKey;
import org.quartz.impl.matchers.KeyMatcher;
import org.quartz.listeners.JobListenerSupport;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

/**
 * The whole server: a job of the cluster fetches a forecast, and the page tells of it.
 */
@SpringBootTest(properties = { "leafward.http.plain=true", "leafward.http.contact=garden@example.org" })
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
class OutsideWeatherTests {

	private static final LocalServer SERVER = LocalServer.start()
		.on("/forecast.csv", LocalServer.text("text/csv", "date,min_c,max_c\n2026-11-26,-1.5,4\n"));

	@Autowired
	private Scheduler scheduler;

	@Autowired
	private Stations stations;

	@Autowired
	private Forecasts forecasts;

	@Autowired
	private JdbcClient database;

	@Autowired
	private MockMvc web;

	@DynamicPropertySource
	static void configure(DynamicPropertyRegistry registry) {
		registry.add("leafward.forecast.csv.XX000000001", () -> SERVER.address("/forecast.csv"));
	}

	@AfterAll
	static void close() {
		SERVER.close();
	}

	@Test
	@WithMockUser(roles = "OPERATOR")
	void theJobFetchesAndThePageTells() throws Exception {
		StationId id = new StationId("XX000000001");
		this.stations.register(new Station(id, "Hill", new GeoPoint(45, 10, 100), false));
		// The schedule's own first run may have come before the station was there.
		this.database.sql("delete from climate.fetch_state").update();
		JobKey forecasts = JobKey.jobKey("climate-fetch-forecasts");
		JobKey observations = JobKey.jobKey("climate-fetch-observations");
		assertThat(run(forecasts)).isEmpty();
		assertThat(run(observations)).isEmpty();
		assertThat(this.scheduler.checkExists(TriggerKey.triggerKey("climate-fetch-forecasts-every-5-min"))).isTrue();
		assertThat(this.scheduler.checkExists(TriggerKey.triggerKey("climate-fetch-observations-every-5-min")))
			.isTrue();
		assertThat(this.forecasts.of(id).orElseThrow().days()).hasSize(1);
		assertThat(SERVER.userAgents()).isNotEmpty().containsOnly("Leafward (garden@example.org)");
		String page = this.web.perform(get("/stations/XX000000001")).andReturn().getResponse().getContentAsString();
		assertThat(page).contains("No day has an observation yet.").contains("less than an hour ago.");
	}

	/** Runs a job and waits for this run, not for one that the schedule began. */
	private Optional<JobExecutionException> run(JobKey job) throws Exception {
		CompletableFuture<Optional<JobExecutionException>> done = new CompletableFuture<>();
		this.scheduler.getListenerManager().addJobListener(new JobListenerSupport() {

			@Override
			public String getName() {
				return "end of " + job;
			}

			@Override
			public void jobWasExecuted(JobExecutionContext context, JobExecutionException failure) {
				if (context.getMergedJobDataMap().containsKey("asked-by-test")) {
					done.complete(Optional.ofNullable(failure));
				}
			}

		}, KeyMatcher.keyEquals(job));
		this.scheduler.triggerJob(job, new JobDataMap(Map.of("asked-by-test", "yes")));
		// A scheduler on a busy machine takes its time.
		return done.get(90, TimeUnit.SECONDS);
	}

}
