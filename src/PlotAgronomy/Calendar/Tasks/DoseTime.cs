using PlotAgronomy.Reference;

namespace PlotAgronomy.Calendar;

/// <summary>The dates that the words of a dose of nitrogen stand for.</summary>
internal sealed class DoseTime
{
    private static readonly Lazy<IReadOnlyDictionary<string, DoseTime>> ByWords = Table.Keyed(
        "Calendar/Data/dose-times.csv",
        row => row.Text("when"),
        row => new DoseTime(row)
    );

    private DoseTime(CsvRow row)
    {
        Anchor = row.Choice<TaskAnchor>("anchor");
        LowDays = row.Integer("low_days");
        HighDays = row.Integer("high_days");
        MayFreeze = row.YesOrNo("may_freeze");
        Origin = row.Origin();
    }

    internal TaskAnchor Anchor { get; }

    internal int LowDays { get; }

    internal int HighDays { get; }

    /// <summary>Whether the ground may be frozen then.</summary>
    internal bool MayFreeze { get; }

    internal Origin Origin { get; }

    /// <summary>The dates; null for words of no date of their own, such as a dose at sowing.</summary>
    internal static DoseTime? Of(string words) => ByWords.Value.GetValueOrDefault(words);
}
