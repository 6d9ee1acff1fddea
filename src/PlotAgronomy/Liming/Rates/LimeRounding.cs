using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>How an institution rounds a rate on its report, as a step of its own.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeRounding
{
    private static readonly Lazy<IReadOnlyDictionary<Institution, LimeRounding>> ByInstitution = new Table<LimeRounding>(
        "Liming/Data/rounding.csv",
        r => new LimeRounding(r)
    ).By(r => r.Institution);

    private readonly bool down;

    private LimeRounding(CsvRow row)
    {
        double unit = LimeUnits.PerUnit(row);
        Institution = row.Institution();
        Step = ApplicationRate.FromPoundsPerAcre(row.Number("step") * unit);
        NoneBelow = ApplicationRate.FromPoundsPerAcre(row.Number("none_below") * unit);
        down = row.YesOrNo("rounds_down");
        Origin = row.Origin();
    }

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the step the rate is rounded to.</summary>
    public ApplicationRate Step { get; }

    /// <summary>Gets the rounded rate below which the report says no lime.</summary>
    public ApplicationRate NoneBelow { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    internal static LimeRounding? ForInstitution(Institution institution) => ByInstitution.Value.GetValueOrDefault(institution);

    /// <summary>Rounds a rate as the report does.</summary>
    /// <param name="rate">Rate.</param>
    /// <returns>The rate to print: to the nearest step (a half goes up), or down where the institution does so; none below its
    /// limit.</returns>
    public ApplicationRate Apply(ApplicationRate rate) =>
        ApplicationRate.FromPoundsPerAcre(PoundsPerAcre(rate.PoundsPerAcre));

    /// <summary>The same as doubles; NaN stays NaN.</summary>
    internal double PoundsPerAcre(double rate)
    {
        double steps = Math.Round(rate / Step.PoundsPerAcre, 9, MidpointRounding.AwayFromZero);
        double whole = down ? Math.Floor(steps) : Math.Round(steps, MidpointRounding.AwayFromZero);
        double rounded = whole * Step.PoundsPerAcre;
        return Tolerance.IsBelow(rounded, NoneBelow.PoundsPerAcre) ? 0 : rounded;
    }

    /// <summary>The step of an institution.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Institution}: to {Amounts.Print(Step, "ton/ac", 3)}";
}
