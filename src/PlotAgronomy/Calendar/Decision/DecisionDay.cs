using System.Collections.Immutable;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>One day of a forecast with the parts a person weighs.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class DecisionDay
{
    internal DecisionDay() { }

    /// <summary>Gets the date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Gets what is told for that day alone.</summary>
    public required WeatherDay Weather { get; init; }

    /// <summary>Gets the rain of the week from that day on, as far as it is told.</summary>
    public required RainOutlook Rain { get; init; }

    /// <summary>Gets the chance of a little rain in that week, a quarter inch.</summary>
    public required RainChance Little { get; init; }

    /// <summary>Gets the chance of enough rain in that week, half an inch.</summary>
    public required RainChance Enough { get; init; }

    /// <summary>Gets the hours from six in the morning until rain is as likely as not; null where the forecast tells no such
    /// rain.</summary>
    public required int? DryHours { get; init; }

    /// <summary>Whether the ground can be worked on that day: it was not soaked the day before, and there are hours enough from
    /// six in the morning until rain that wets it.</summary>
    internal bool CanBeWorked { get; init; }

    /// <summary>Gets the days from that day to an early freeze; null where frost is not known.</summary>
    public required int? DaysToFrost { get; init; }

    /// <summary>Gets the days that the lime has been on; null without lime.</summary>
    public required int? LimeDays { get; init; }

    /// <summary>Gets the kinds, each with its own reasons and verdict.</summary>
    public required ImmutableArray<KindOnDay> Kinds { get; init; }

    /// <summary>Gets the verdict: wait where every kind waits, with care where one does.</summary>
    public PlantingVerdict Verdict => Verdicts.OfSeveral([.. Kinds.Select(k => k.Verdict)]);

    /// <summary>Gets the kinds that wait while others may be sown.</summary>
    public ImmutableArray<CropKind> Without =>
        Verdict == PlantingVerdict.Wait ? [] : [.. Kinds.Where(k => k.Verdict == PlantingVerdict.Wait).Select(k => k.Kind)];

    /// <summary>Gets the reasons of all kinds, each once, most serious first.</summary>
    public ImmutableArray<Finding> Reasons => Finding.InOrder(Kinds.SelectMany(k => k.Reasons));

    /// <summary>Gets what would change the verdict, in words; none where nothing speaks against it.</summary>
    public ImmutableArray<string> WouldChangeIt =>
        [.. Reasons.Where(r => r.Severity > FindingSeverity.Note).Select(r => Remedies.Of(r.Code)).OfType<string>().Distinct()];

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{CalendarText.Date(Date)}: {PlantingDay.VerdictWords[Verdict]}";
}
