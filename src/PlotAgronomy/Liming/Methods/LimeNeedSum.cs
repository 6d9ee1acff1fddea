using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>One run of a method on one sample: what stopped it, else what its formula gave. Rates and findings follow from that
/// when asked for.</summary>
internal readonly struct LimeNeedSum
{
    private readonly EarlierLime? earlier;
    private readonly LimeStop stop;

    internal LimeNeedSum(LimeMethod method, PlotSoil soil, double target, EarlierLime? earlier, double error)
    {
        Method = method;
        Soil = soil;
        Target = target;
        Error = error;
        this.earlier = earlier;
        double? reading = method.Formula.ReadingOf(soil);
        var stops = new LimeStops(method, soil.Class, target);
        stop = stops.Of(soil.PhInWater ?? double.NaN, reading ?? double.NaN);
        Reading = stop is LimeStop.Soil or LimeStop.AtTarget or LimeStop.WithinMargin ? null : reading;
        RawPoundsPerAcre = stop switch
        {
            LimeStop.None => method.Formula.PoundsPerAcre(Reading!.Value, soil, target),
            LimeStop.AtTarget or LimeStop.WithinMargin or LimeStop.AboveTable => 0,
            _ => null,
        };
    }

    internal LimeMethod Method { get; }

    internal PlotSoil Soil { get; }

    internal double Target { get; }

    /// <summary>How far a pH reading may be off.</summary>
    internal double Error { get; }

    internal double? Reading { get; }

    internal double? RawPoundsPerAcre { get; }

    internal EarlierLime? Earlier => earlier;

    internal LimeRate? Gross => RawPoundsPerAcre is { } pounds ? Labelled(Math.Max(0, pounds)) : null;

    internal LimeRate? Rate => Net(RawPoundsPerAcre) is { } pounds ? Labelled(pounds) : null;

    internal LimeRate? Published => PublishedPounds is { } pounds ? Labelled(pounds) : null;

    internal LimeRate? Lowest => Net(Shifted(Error)) is { } pounds ? Labelled(pounds) : null;

    internal LimeRate? Highest => Net(Shifted(-Error)) is { } pounds ? Labelled(pounds) : null;

    /// <summary>What stopped it.</summary>
    internal LimeStop Stop => stop;

    internal IEnumerable<Finding> Findings()
    {
        foreach (var standing in LimeMethodChecks.Standing(Method, Soil, Target))
        {
            yield return standing;
        }

        foreach (var found in LimeMethodChecks.Found(Method, Soil, Target, Reading, stop))
        {
            yield return found;
        }

        if (stop == LimeStop.None)
        {
            foreach (var own in FormulaFindings(Reading!.Value))
            {
                yield return own;
            }
        }

        if (RawPoundsPerAcre > 0 && Method.Formula.ReadsPh && (Shifted(Error) is null || Shifted(-Error) is null))
        {
            yield return FindingCatalog.Create(
                LimingCodes.RangeOpen,
                ("error", Amounts.Print(Error, 2)),
                ("method", Method.Name)
            );
        }

        if (RawPoundsPerAcre is not null && earlier is not null && !EarlierLime.IsCreditedBy(Method.Institution))
        {
            yield return EarlierLime.NoCreditFrom(Method.Institution);
        }

        if (Net(RawPoundsPerAcre) > 0 && PublishedPounds == 0 && Rounding is { NoneBelow.PoundsPerAcre: > 0 } rounding)
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
        Net(RawPoundsPerAcre) is not { } net ? null
        : Rounding is { } rounding ? rounding.Apply(ApplicationRate.FromPoundsPerAcre(net)).PoundsPerAcre
        : net;

    private IEnumerable<Finding> FormulaFindings(double reading)
    {
        foreach (var finding in Method.Formula.Findings(reading, Soil, Target))
        {
            yield return finding;
        }

        if (RawPoundsPerAcre is not { } raw)
        {
            if (!Method.Formula.SaysWhyNoRate)
            {
                yield return FindingCatalog.Create(
                    LimingCodes.CellBlank,
                    ("method", Method.Name),
                    ("reading", Amounts.Print(reading, 2)),
                    ("target", LimeText.Ph(Target))
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
                ("target", LimeText.Ph(Target))
            );
        }
    }

    /// <summary>Published equations of neighbouring targets may cross; then the answer is out of step and says so.</summary>
    private double? LowerTargetThatNeedsMore(double reading, double pounds)
    {
        foreach (double lower in Method.TargetPhs)
        {
            if (
                lower < Target
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
        stop == LimeStop.None && RawPoundsPerAcre is not null && Reading + error is { } reading ? AtReading(reading) : null;

    private double? AtReading(double reading) =>
        !Method.Formula.ReadsPh || Tolerance.IsBelow(reading, Method.LowestReading) ? null
        : Tolerance.IsAbove(reading, Method.HighestReading) ? (Method.NoLimeAboveHighest ? 0 : null)
        : Method.Formula.PoundsPerAcre(reading, Soil, Target);

    /// <summary>What is left of a rate after earlier lime; a negative one means none.</summary>
    private double? Net(double? poundsPerAcre) =>
        poundsPerAcre is not { } pounds ? null
        : earlier is null ? Math.Max(0, pounds)
        : earlier.TakeOff(Math.Max(0, pounds), Method.Institution, Soil.Class);

    private LimeRate Labelled(double poundsPerAcre) =>
        LimeRate.FromBasis(
            ApplicationRate.FromPoundsPerAcre(poundsPerAcre),
            Target,
            Method.Depth,
            Method.Basis,
            Method.Institution
        );
}
