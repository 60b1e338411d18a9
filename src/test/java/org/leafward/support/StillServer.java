package org.leafward.support;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.Instant;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.test.context.ContextConfiguration;

/**
 * An empty server where time stands still and no job runs; shared like
 * {@link DemoServer}. Set the clock before each test. Sites have weather by the stations
 * near them, so each class has ground of its own, some degrees from that of others, and
 * stations of its own.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(properties = { "leafward.rate-limits=false", "leafward.forecast.stale-after=12h",
		"spring.quartz.auto-startup=false" })
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
@Import(StillServer.Times.class)
public @interface StillServer {

	/** The clock of the server. */
	@TestConfiguration(proxyBeanMethods = false)
	class Times {

		@Bean
		@Primary
		SettableClock settableClock() {
			return new SettableClock(Instant.parse("2026-05-20T15:00:00Z"));
		}

	}

}
