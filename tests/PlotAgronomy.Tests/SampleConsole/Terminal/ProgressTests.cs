using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Tests.SampleConsole.Terminal;

/// <summary>What a person sees while a sum takes longer than a second.</summary>
public sealed class ProgressTests
{
    /// <summary>A clock whose seconds pass when the test says so.</summary>
    private sealed class HandClock : TimeProvider, ITimer
    {
        private TimerCallback? tick;

        internal bool IsRunning => tick is not null;

        internal void Pass(int seconds)
        {
            for (int i = 0; i < seconds; i++)
            {
                tick?.Invoke(null);
            }
        }

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            Assert.Equal((TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(1)), (dueTime, period));
            tick = callback;
            return this;
        }

        public bool Change(TimeSpan dueTime, TimeSpan period) => true;

        public void Dispose() => tick = null;

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }

    [Fact]
    public void Under_a_second_nothing_is_shown()
    {
        var (clock, seen) = (new HandClock(), new StringWriter());
        new Progress(seen, isWatched: true, clock).Dispose();
        Assert.Equal("", seen.ToString());
        Assert.False(clock.IsRunning);
    }

    [Fact]
    public void Every_second_is_counted_in_one_line_and_the_line_is_wiped()
    {
        var (clock, seen) = (new HandClock(), new StringWriter());
        using (new Progress(seen, isWatched: true, clock))
        {
            clock.Pass(2);
            Assert.Equal("\rworking, 1 s\rworking, 2 s", seen.ToString());
        }

        Assert.Equal("\rworking, 1 s\rworking, 2 s\r            \r", seen.ToString());
    }

    [Fact]
    public void Once_the_command_writes_or_asks_it_is_over()
    {
        var (clock, seen) = (new HandClock(), new StringWriter());
        using var progress = new Progress(seen, isWatched: true, clock);
        clock.Pass(1);
        progress.Stop();
        string wiped = seen.ToString();
        clock.Pass(3);
        progress.Stop();
        Assert.Equal("\rworking, 1 s\r            \r", wiped);
        Assert.Equal(wiped, seen.ToString());
    }

    [Fact]
    public void Where_nobody_watches_no_clock_is_started()
    {
        var (clock, seen) = (new HandClock(), new StringWriter());
        using var progress = new Progress(seen, isWatched: false, clock);
        clock.Pass(5);
        Assert.False(clock.IsRunning);
        Assert.Equal("", seen.ToString());
    }
}
