package org.leafward.support;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

/**
 * The demo at a public address, without limits on calls; shared like {@link DemoServer}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "leafward.base-url=" + PublicDemoServer.ADDRESS,
				"leafward.operator-token=" + PublicDemoServer.TOKEN, "leafward.rate-limits=false" })
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
public @interface PublicDemoServer {

	/** What mails and feeds call it. */
	String ADDRESS = "https://plants.example.org";

	/** Opens the API as the operator. */
	String TOKEN = "a-token-for-tests-only-0123456789";

}
