using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The lime a soil needs by one method, with its four labels, or why the method does not answer.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LimeNeed : IWorkedResult
{
    private readonly double? rawPoundsPerAcre;

    /// <summary>One run of the method: what stopped it, else what its formula gave. Rates and findings follow when asked
    /// for.</summary>
    internal LimeNeed(LimeMethod method, PlotSoil soil, double targetPh, EarlierLime? earlier, double readingErrorPh)
    {
        Method = method;
        Soil = soil;
        TargetPh = targetPh;
        ReadingErrorPh = readingErrorPh;
        EarlierLime = earlier;
        double? reading = method.Formula.ReadingOf(soil);
        var stops = new LimeStops(method, soil.Class, targetPh);
        Stop = stops.Of(soil.PhInWater ?? double.NaN, reading ?? double.NaN);
        Reading = Stop is LimeStop.Soil or LimeStop.AtTarget or LimeStop.WithinMargin ? null : reading;
        rawPoundsPerAcre = Stop switch
        {
            LimeStop.None => method.Formula.PoundsPerAcre(Reading!.Value, soil, targetPh),
            LimeStop.AtTarget or LimeStop.WithinMargin or LimeStop.AboveTable => 0,
            _ => null,
        };
    }

    /// <summary>Gets the method.</summary>
    public LimeMethod Method { get; }

    /// <summary>Gets the soil.</summary>
    public PlotSoil Soil { get; }

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the reading that was used, in the method's terms; null when none was.</summary>
    public double? Reading { get; }

    /// <summary>Gets what the formula gave in ton/ac of the basis before a negative figure became none; null when there is no
    /// answer.</summary>
    internal double? RawTonsPerAcre => rawPoundsPerAcre / ExactUnits.PoundsPerShortTon;

    /// <summary>Gets the rate before earlier lime was taken off, or null.</summary>
    public LimeRate? Gross => rawPoundsPerAcre is { } pounds ? Labelled(Math.Max(0, pounds)) : null;

    /// <summary>Gets the exact rate still needed; null when the method does not answer (the findings say why).</summary>
    public LimeRate? Rate => Net(rawPoundsPerAcre) is { } pounds ? Labelled(pounds) : null;

    /// <summary>Gets the rate as the institution would print it, rounded its way; the exact rate where it prints no
    /// rounding.</summary>
    public LimeRate? Published => PublishedPounds is { } pounds ? Labelled(pounds) : null;

    /// <summary>Gets the rate if the true reading is higher by the reading error; null where that lies outside the method or the
    /// reading is no pH.</summary>
    public LimeRate? Lowest => Net(Shifted(ReadingErrorPh)) is { } pounds ? Labelled(pounds) : null;

    /// <summary>Gets the rate if the true reading is lower by the reading error; null where that lies outside the method or the
    /// reading is no pH.</summary>
    public LimeRate? Highest => Net(Shifted(-ReadingErrorPh)) is { } pounds ? Labelled(pounds) : null;

    /// <summary>Gets how far the reading may be off, in pH.</summary>
    public double ReadingErrorPh { get; }

    /// <summary>Gets the lime put on before that was taken into account, or null.</summary>
    public EarlierLime? EarlierLime { get; }

    /// <summary>The rate as the institution rounds it, where that is another than the exact one.</summary>
    internal LimeRate? Rounded => Published is { } rounded && rounded.OfBasis != Rate?.OfBasis ? rounded : null;

    /// <summary>Both rates that the reading error allows, where they differ.</summary>
    internal (LimeRate Low, LimeRate High)? ReadingRange =>
        this is { Lowest: { } low, Highest: { } high } && high.OfBasis > low.OfBasis ? (low, high) : null;

    /// <summary>What stopped the method.</summary>
    internal LimeStop Stop { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FindingsInTurn());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Method.Origin.Sources.Union(Method.Basis.Origin.Sources)];

    private IEnumerable<Finding> FindingsInTurn()
    {
        foreach (var standing in LimeMethodChecks.Standing(Method, Soil, TargetPh))
        {
            yield return standing;
        }

        foreach (var found in LimeMethodChecks.Found(Method, Soil, TargetPh, Reading, Stop))
        {
            yield return found;
        }

        if (Stop == LimeStop.None)
        {
            foreach (var own in FormulaFindings(Reading!.Value))
            {
                yield return own;
            }
        }

        if (
            rawPoundsPerAcre > 0
            && Method.Formula.ReadsPh
            && (Shifted(ReadingErrorPh) is null || Shifted(-ReadingErrorPh) is null)
        )
        {
            yield return FindingCatalog.Create(
                LimingCodes.RangeOpen,
                ("error", Amounts.Print(ReadingErrorPh, 2)),
                ("method", Method.Name)
            );
        }

        if (rawPoundsPerAcre is not null && EarlierLime is not null && !EarlierLime.IsCreditedBy(Method.Institution))
        {
            yield return EarlierLime.NoCreditFrom(Method.Institution);
        }

        if (Net(rawPoundsPerAcre) > 0 && PublishedPounds == 0 && Rounding is { NoneBelow.PoundsPerAcre: > 0 } rounding)
        {
            yield return FindingCatalog.Create(
                LimingCodes.SmallNeed,
                ("limit", LimeText.Tons(rounding.NoneBelow.PoundsPerAcre)),
                ("institution", Method.Institution.Name)
            );
        }
    }

    private LimeRounding? Rounding => LimeRounding.ForInstitution(Method.Institution);

    private double? PublishedPounds =>
        Net(rawPoundsPerAcre) is not { } net ? null
        : Rounding is { } rounding ? rounding.Apply(ApplicationRate.FromPoundsPerAcre(net)).PoundsPerAcre
        : net;

    private IEnumerable<Finding> FormulaFindings(double reading)
    {
        foreach (var finding in Method.Formula.Findings(reading, Soil, TargetPh))
        {
            yield return finding;
        }

        if (rawPoundsPerAcre is not { } raw)
        {
            if (!Method.Formula.SaysWhyNoRate)
            {
                yield return FindingCatalog.Create(
                    LimingCodes.CellBlank,
                    ("method", Method.Name),
                    ("reading", Amounts.Print(reading, 2)),
                    ("target", LimeText.Ph(TargetPh))
                );
            }

            yield break;
        }

        if (raw < 0)
        {
            yield return FindingCatalog.Create(LimingCodes.NegativeMeansNone, ("raw", LimeText.Tons(raw)));
        }

        if (LowerTargetThatNeedsMore(reading, raw) is { } lower)
        {
            yield return FindingCatalog.Create(
                LimingCodes.LowerTargetNeedsMore,
                ("method", Method.Name),
                ("lower", LimeText.Ph(lower)),
                ("target", LimeText.Ph(TargetPh))
            );
        }
    }

    /// <summary>Published equations of neighbouring targets may cross; then the answer is out of step and says so.</summary>
    private double? LowerTargetThatNeedsMore(double reading, double pounds)
    {
        foreach (double lower in Method.TargetPhs)
        {
            if (
                lower < TargetPh
                && !(Soil.PhInWater >= lower)
                && Method.Formula.PoundsPerAcre(reading, Soil, lower) > Math.Max(0, pounds) + 1e-6
            )
            {
                return lower;
            }
        }

        return null;
    }

    /// <summary>lb/ac for a pH reading that is off; null where that lies outside the method, or the reading is no pH.</summary>
    private double? Shifted(double error) =>
        Stop == LimeStop.None && rawPoundsPerAcre is not null && Reading + error is { } reading ? AtReading(reading) : null;

    private double? AtReading(double reading) =>
        !Method.Formula.ReadsPh || Tolerance.IsBelow(reading, Method.LowestReading) ? null
        : Tolerance.IsAbove(reading, Method.HighestReading) ? (Method.NoLimeAboveHighest ? 0 : null)
        : Method.Formula.PoundsPerAcre(reading, Soil, TargetPh);

    /// <summary>What is left of a rate after earlier lime; a negative one means none.</summary>
    private double? Net(double? poundsPerAcre) =>
        poundsPerAcre is not { } pounds ? null
        : EarlierLime is null ? Math.Max(0, pounds)
        : EarlierLime.TakeOff(Math.Max(0, pounds), Method.Institution, Soil.Class);

    private LimeRate Labelled(double poundsPerAcre) =>
        LimeRate.FromBasis(
            ApplicationRate.FromPoundsPerAcre(poundsPerAcre),
            TargetPh,
            Method.Depth,
            Method.Basis,
            Method.Institution
        );

    /// <summary>The rate with its labels, or why there is none.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Rate?.ToString() ?? Findings[0].Text;
}
