using System.Globalization;

namespace PlotAgronomy.Sample.Output;

/// <summary>Tells a person at a terminal that a sum is still going on: from the first second on one line on stderr, wiped as
/// soon as the command writes or asks anything.</summary>
internal sealed class Progress : IDisposable
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    private readonly Lock writing = new();
    private readonly TextWriter error;
    private readonly ITimer? timer;
    private int seconds;
    private int shown;
    private bool isOver;

    internal Progress(TextWriter error, bool isWatched, TimeProvider clock)
    {
        this.error = error;
        isOver = !isWatched;
        timer = isWatched ? clock.CreateTimer(_ => Tell(), null, Second, Second) : null;
    }

    /// <summary>Wipes the line; nothing is shown any more.</summary>
    internal void Stop()
    {
        lock (writing)
        {
            if (isOver)
            {
                return;
            }

            isOver = true;
            Show("");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        timer?.Dispose();
        Stop();
    }

    private void Tell()
    {
        lock (writing)
        {
            if (!isOver)
            {
                seconds++;
                Show(string.Create(CultureInfo.InvariantCulture, $"working, {seconds} s"));
            }
        }
    }

    /// <summary>Writes over what stood there, by blanks: no command to the terminal but the return of the carriage.</summary>
    private void Show(string text)
    {
        if (text.Length + shown > 0)
        {
            error.Write($"\r{text.PadRight(shown)}");
            error.Write(text.Length == 0 ? "\r" : "");
            error.Flush();
        }

        shown = text.Length;
    }
}
