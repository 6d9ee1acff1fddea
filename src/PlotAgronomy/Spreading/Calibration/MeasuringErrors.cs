using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>How far each measurement may be off, plus or minus. What is left out counts as exact.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class MeasuringErrors
{
    /// <summary>Every measurement exact.</summary>
    internal static readonly MeasuringErrors None = new();

    /// <summary>Gets the error of the weighed amount; at least 0.</summary>
    public Mass Scale { get; init; }

    /// <summary>Gets the error of the course length or of the distance walked; at least 0.</summary>
    public Length Distance { get; init; }

    /// <summary>Gets the error of the swath or of the spacing of the passes; at least 0.</summary>
    public Length Swath { get; init; }

    /// <summary>Gets the error of the stopwatch; at least 0.</summary>
    public TimeSpan Time { get; init; }

    /// <summary>Gets how far the pace kept in the plot may lie off the measured one; at least 0. For a run it counts only when
    /// the run
    /// was timed.</summary>
    public Speed Pace { get; init; }

    /// <summary>The errors.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"scale {Amounts.Print(Scale, "oz", 2)}, distance {Amounts.Print(Distance, "ft", 2)}, "
        + $"swath {Amounts.Print(Swath, "ft", 2)}, time {Amounts.Print(Time, "s", 2)}, pace {Amounts.Print(Pace, "mph", 2)}";
}
