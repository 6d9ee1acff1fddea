using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Records;

/// <summary>Lime on the plot that has not done all it will.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeAtWork
{
    private readonly LimeReaction atEnd;

    private LimeAtWork(LimeEntry entry, LimeReaction worked, LimeReaction atEnd)
    {
        Entry = entry;
        Worked = worked;
        this.atEnd = atEnd;
    }

    /// <summary>Gets the lime that was spread.</summary>
    public LimeEntry Entry { get; }

    /// <summary>Gets the part of it that has worked, and after how many months.</summary>
    public LimeReaction Worked { get; }

    /// <summary>Gets the part of the lime that has still to work in its first year, the most it can be.</summary>
    public Fraction StillToWork => Fraction.FromValue(atEnd.High.Value - Worked.Low.Value);

    /// <summary>The lime and how far it is.</summary>
    /// <returns>Text such as <c>620 lb of pelleted lime: 30 % to 60 % after 3 months</c>.</returns>
    public override string ToString() => $"{Amounts.Print(Entry.Weight, "lb", 0)} of {Entry.Material.Name}: {Worked}";

    /// <summary>Null where it has done all it will.</summary>
    internal static LimeAtWork? Of(LimeEntry entry, DateOnly on)
    {
        double months = Months(entry.On, on);
        var worked = LimeReaction.After(entry.Material, months);
        var atEnd = LimeReaction.After(entry.Material, Math.Max(months, LimingConstants.All["first-year"]));
        return entry.Material.Neutralizes && worked.Low.Value < atEnd.Low.Value - Tolerance.Dust
            ? new(entry, worked, atEnd)
            : null;
    }

    internal static double Months(DateOnly from, DateOnly to) => (to.DayNumber - from.DayNumber) / ExactUnits.DaysPerMonth;

    internal Finding Told() =>
        FindingCatalog.Create(
            RecordCodes.LimeAtWork,
            ("pounds", Amounts.Print(Entry.Weight, "lb", 0)),
            ("material", Entry.Material.Name),
            ("date", FieldWriter.Of(Entry.On)),
            ("part", Worked.Part),
            ("done", FieldWriter.Of(Entry.On.AddMonths((int)LimingConstants.All["first-year"])))
        );
}
