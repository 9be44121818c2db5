package setwright.app.server.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import setwright.logbook.problem.LogbookProblem;

/** Jobs one after the other. */
final class JobsTest {
    private final Jobs jobs = new Jobs();

    @AfterEach
    void close() {
        jobs.close();
    }

    /** Waits until a job is over, as a page does: by being told. */
    private Job over(long id) throws InterruptedException {
        BlockingQueue<List<Job>> told = new LinkedBlockingQueue<>();
        jobs.listen(told::add);
        jobs.tell();
        for (List<Job> now = told.poll(20, TimeUnit.SECONDS); now != null; now = told.poll(20, TimeUnit.SECONDS)) {
            for (Job job : now) {
                if (job.id() == id && job.state().over()) {
                    return job;
                }
            }
        }
        throw new AssertionError("nothing was told of the end of job " + id);
    }

    @Test
    void oneAfterTheOther() throws InterruptedException {
        List<String> done = Collections.synchronizedList(new ArrayList<>());
        for (String name : List.of("a", "b", "c")) {
            jobs.start(name, name, 1, progress -> {
                progress.step("work");
                done.add(name);
            });
        }
        over(3);
        assertThat(done).containsExactly("a", "b", "c");
        assertThat(jobs.all()).extracting(Job::state).containsOnly(Job.State.DONE);
        assertThat(jobs.all()).extracting(Job::id).containsExactly(3L, 2L, 1L);
    }

    @Test
    void theSameWorkIsNotDoneTwiceAtOnce() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        Job first = jobs.start("stint 1", "Reading", 1, progress -> go.await());
        assertThat(jobs.start("stint 1", "Reading", 1, progress -> {}).id()).isEqualTo(first.id());
        go.countDown();
        over(first.id());
        assertThat(jobs.start("stint 1", "Reading", 1, progress -> {}).id()).isNotEqualTo(first.id());
    }

    @Test
    void whatFailsIsSaidAndTakesNothingWithIt() throws InterruptedException {
        Job failing = jobs.start("a", "A", 1, progress -> {
            throw new LogbookProblem("there is no stint 7 in the logbook.");
        });
        Job faulty = jobs.start("b", "B", 1, progress -> {
            throw new StackOverflowError();
        });
        Job next = jobs.start("c", "C", 1, progress -> {});
        assertThat(over(next.id()).state()).isEqualTo(Job.State.DONE);
        assertThat(over(failing.id()).message()).isEqualTo("there is no stint 7 in the logbook.");
        assertThat(over(faulty.id()).message()).contains("something went wrong inside the program");
    }

    @Test
    void aRunningJobStopsAtItsNextStepAndAWaitingOneAtOnce() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        List<String> done = Collections.synchronizedList(new ArrayList<>());
        Job running = jobs.start("a", "A", 2, progress -> {
            progress.step("one");
            begun.countDown();
            go.await();
            progress.step("two");
            done.add("a");
        });
        Job waiting = jobs.start("b", "B", 1, progress -> done.add("b"));
        begun.await();
        jobs.stop(running.id());
        jobs.stop(waiting.id());
        assertThat(over(waiting.id()).state()).isEqualTo(Job.State.STOPPED);
        assertThat(jobs.find("a").orElseThrow().stopping()).isTrue();
        go.countDown();
        assertThat(over(running.id()).state()).isEqualTo(Job.State.STOPPED);
        over(jobs.start("c", "C", 1, progress -> {}).id());
        assertThat(done).isEmpty();
    }

    @Test
    void howFarItHasComeIsTold() throws InterruptedException {
        BlockingQueue<List<Job>> told = new LinkedBlockingQueue<>();
        CountDownLatch looked = new CountDownLatch(1);
        jobs.listen(told::add);
        Job job = jobs.start("a", "A", 3, progress -> {
            progress.step("one");
            progress.step("two");
            progress.ready("half of it", "/stints/1");
            looked.await();
        });
        Job seen = job;
        while (seen.link().isEmpty()) {
            List<Job> now = told.poll(20, TimeUnit.SECONDS);
            assertThat(now).isNotNull();
            seen = now.get(0);
        }
        assertThat(seen.step()).isEqualTo("two");
        assertThat(seen.done()).isEqualTo(1);
        assertThat(seen.steps()).isEqualTo(3);
        assertThat(seen.state()).isEqualTo(Job.State.RUNNING);
        looked.countDown();
        assertThat(over(job.id()).done()).isEqualTo(3);
    }

    @Test
    void oldJobsAreForgotten() throws InterruptedException {
        for (int i = 0; i < 60; i++) {
            over(jobs.start("job " + i, "Job", 1, progress -> {}).id());
        }
        assertThat(jobs.all()).hasSizeLessThanOrEqualTo(20);
        assertThat(jobs.find("job 0")).isEmpty();
        assertThat(jobs.find("job 59")).isPresent();
    }
}
