using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>The measured numbers of a plan whose errors are known.</summary>
internal static class MeasuredNumbers
{
    internal static IEnumerable<MeasuredNumber> Of(PlotAnswers answers) =>
        InThePlan(answers.Plan).Concat(answers.Spreading.OrNull() is null ? [] : AtTheSpreader(answers.Plan));

    private static IEnumerable<MeasuredNumber> InThePlan(PlotPlan plan)
    {
        if (plan.Report is { } report)
        {
            if (report.WaterPh is { Value: var ph } && WaterPhError is { Value: var off } error && ph > off && ph + off < 14)
            {
                yield return new MeasuredNumber.InThePlan(
                    "soil pH",
                    Amounts.Print(ph, 2),
                    Amounts.Print(off, 2),
                    error.Origin,
                    Reported(r => r with { WaterPh = WaterPh.FromValue(ph - off) }),
                    Reported(r => r with { WaterPh = WaterPh.FromValue(ph + off) })
                );
            }

            if (
                !report.BufferPhs.IsEmpty
                && report.BufferPhs.All(b => b.Value > BufferPhError.Value && b.Value + BufferPhError.Value < 14)
            )
            {
                yield return new MeasuredNumber.InThePlan(
                    "buffer pH",
                    Amounts.Print(report.BufferPhs[0].Value, 2),
                    Amounts.Print(BufferPhError.Value, 2),
                    BufferPhError.Origin,
                    Reported(r => r with { BufferPhs = [.. r.BufferPhs.Select(b => Moved(b, -BufferPhError.Value))] }),
                    Reported(r => r with { BufferPhs = [.. r.BufferPhs.Select(b => Moved(b, BufferPhError.Value))] })
                );
            }
        }

        yield return Area(plan);
        foreach (var kind in plan.Kinds)
        {
            if (Germination(plan, kind) is { } germination)
            {
                yield return germination;
            }
        }

        PlotPlan Reported(Func<SoilReport, SoilReport> changed) => plan with { Report = changed(plan.Report) };
    }

    private static Constant WaterPhError => StakeConstants.All.Find("water-ph-error");

    private static Constant BufferPhError => LimingConstants.All.Find("reading-error");

    private static BufferPh Moved(BufferPh reading, double by) => BufferPh.FromValue(reading.Value + by, reading.Buffer);

    /// <summary>An area by paces or fixes knows its error; others have that of their way of measuring.</summary>
    private static MeasuredNumber.InThePlan Area(PlotPlan plan)
    {
        var measured = plan.Plot.Measured;
        var usual = StakeConstants.All.Find(
            measured.Method switch
            {
                AreaMethod.Sides or AreaMethod.Paces => "sides-error",
                AreaMethod.MapOutline or AreaMethod.GeographicOutline => "outline-error",
                _ => "area-error",
            }
        );
        double part = measured.RelativeError ?? usual.Value;
        double acres = measured.Area.Acres;
        return new(
            "area",
            Amounts.Print(measured.Area, decimals: 3),
            Amounts.Print(acres * part, 3),
            measured.RelativeError is null ? usual.Origin : Origin.FromUser("the measuring of the plot"),
            At(LandMath.LowArea(acres, part)),
            At(LandMath.HighArea(acres, part))
        );

        PlotPlan At(double changed) =>
            plan with
            {
                Plot = plan.Plot with { Measured = measured.Scaled(UnitsNet.Area.FromAcres(changed)) },
            };
    }

    /// <summary>Two tests of one lot may lie so far apart by the rule of seed control. No lot holds more than lives.</summary>
    private static MeasuredNumber.InThePlan? Germination(PlotPlan plan, PlannedKind kind)
    {
        var lot = kind.Offer.Item;
        var tag = lot.Analysis;
        if (tag.Tetrazolium is not null)
        {
            return null;
        }

        var rule = GerminationTolerance.Compare(tag.Germination, tag.Germination);
        double off = rule.TolerancePoints / 100,
            most = 1 - tag.HardSeed.Value - tag.DormantSeed.Value;
        return tag.Germination.Value <= off
            ? null
            : new(
                $"germination of {kind.Kind.ShortName}",
                Amounts.Print(tag.Germination, 0),
                Amounts.Print(rule.TolerancePoints, 0),
                rule.Origin,
                At(tag.Germination.Value - off),
                At(Math.Max(tag.Germination.Value, Math.Min(most, tag.Germination.Value + off)))
            );

        PlotPlan At(double germination) =>
            plan with
            {
                Kinds =
                [
                    .. plan.Kinds.Select(k =>
                        k == kind
                            ? k with
                            {
                                Offer = k.Offer with
                                {
                                    Item = lot with { Analysis = tag.Germinating(Fraction.FromValue(germination)) },
                                },
                            }
                            : k
                    ),
                ],
            };
    }

    /// <summary>A spreader set by a swath, a run and a pace that were not quite so: another amount of seed
    /// falls.</summary>
    private static IEnumerable<MeasuredNumber> AtTheSpreader(PlotPlan plan)
    {
        if (plan.Method == PlantingMethod.Drilled || plan.Spreader is not { } spreader)
        {
            yield break;
        }

        var swath = StakeConstants.All.Find("swath-error");
        double feet = spreader.Swath.Feet;
        yield return new MeasuredNumber.AtTheSpreader(
            "swath",
            Amounts.Print(spreader.Swath, "ft", 1),
            Amounts.Print(feet * swath.Value, feet * swath.Value < 1 ? 1 : 0),
            swath.Origin,
            1 / (1 + swath.Value),
            1 / (1 - swath.Value),
            _ => true
        );
        var pace = StakeConstants.All.Find("pace-error");
        if (spreader.Runs.Any(r => r.Time is not null))
        {
            yield return new MeasuredNumber.AtTheSpreader(
                "pace at the gate",
                "as in the weighed run",
                $"{Amounts.Print(100 * pace.Value, 0)} %",
                pace.Origin,
                1 / (1 + pace.Value),
                1 / (1 - pace.Value),
                pass => pass.Run?.Time is not null
            );
        }

        var scale = StakeConstants.All.Find("run-error");
        double pounds = Mass.FromOunces(scale.Value).Pounds;
        foreach (var run in spreader.Runs.Where(r => r.Weighed.Pounds > pounds))
        {
            double part = pounds / run.Weighed.Pounds;
            yield return new MeasuredNumber.AtTheSpreader(
                $"weighed run of {run.Kind.ShortName}",
                Amounts.PrintForScale(run.Weighed),
                $"{Amounts.Print(scale.Value, 0)} oz",
                scale.Origin,
                1 - part,
                1 + part,
                pass => pass.Run == run
            );
        }
    }
}
