package org.leafward.support;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

/**
 * The demo as its visitors find it, for those who walk through it; apart from
 * {@link DemoServer}, whose tests add sites to the people of the demo. Requests that are
 * made up by MockMvc also put repositories of their own into the filters, after which a
 * browser was found signed out.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "leafward.base-url=")
@ActiveProfiles("demo")
@ContextConfiguration(initializers = TestDatabase.class)
public @interface WalkServer {

}
