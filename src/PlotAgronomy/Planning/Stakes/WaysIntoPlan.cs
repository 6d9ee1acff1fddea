using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>For the code of each question: how its answer is put into a plan. A new question has its line here, or its reason in
/// <see cref="NothingPrinted"/> or in the list of the house test.</summary>
internal static class WaysIntoPlan
{
    private static readonly Dictionary<string, WayIntoPlan> Ways = new()
    {
        [SoilCodes.AskWaterPh] = WayIntoPlan.For<WaterPh>((plan, _, ph) => Reported(plan, r => r with { WaterPh = ph })),
        [SoilCodes.AskTexture] = WayIntoPlan.For<SoilTexture>(
            (plan, _, texture) => OnPlot(plan, p => p with { Texture = texture })
        ),
        [SoilCodes.AskSampledDay] = WayIntoPlan.For<DateOnly>((plan, _, day) => Reported(plan, r => r with { SampledOn = day })),
        [LimingCodes.AskBasis] = WayIntoPlan.For<LimeBasis>((plan, _, basis) => OnPrintedLime(plan, p => p.With(basis: basis))),
        [LimingCodes.AskRange] = WayIntoPlan.For<ApplicationRate>(
            (plan, _, meant) => OnPrintedLime(plan, printed => printed.At(meant))
        ),
        [LimingCodes.AskTarget] = WayIntoPlan.For<double>((plan, _, ph) => OnPrintedLime(plan, p => p.With(targetPh: ph))),
        [LimingCodes.AskDepth] = WayIntoPlan.For<Length>((plan, _, depth) => OnPrintedLime(plan, p => p.With(depth: depth))),
        [LimingCodes.AskLabel] = WayIntoPlan.For<LimeFigure>(OnLabel),
        [LimingCodes.AskMethod] = WayIntoPlan.For<LimeMethod>((plan, _, method) => plan with { LimeMethod = method }),
        [LimingCodes.AskWhose] = WayIntoPlan.For<LimeMethod>((plan, _, method) => plan with { LimeMethod = method }),
        [LimingCodes.AskReading] = WayIntoPlan.For<double>(Read),
        [LimingCodes.AskDay] = WayIntoPlan.For<DateOnly>((plan, _, day) => plan with { LimeDate = day }),
        [NutrientCodes.AskSystem] = WayIntoPlan.For<RecommendationSystem>(
            (plan, _, system) => plan with { NutrientSystem = system }
        ),
        [NutrientCodes.AskWhose] = WayIntoPlan.For<RecommendationSystem>(
            (plan, _, system) => plan with { NutrientSystem = system }
        ),
        [PlanningCodes.AskMethod] = WayIntoPlan.For<PlantingMethod>((plan, _, method) => plan with { Method = method }),
        [PlanningCodes.AskMethodMeant] = WayIntoPlan.For<PlantingMethod>((plan, _, method) => plan with { Method = method }),
        [FertilizerCodes.AskWater] = WayIntoPlan.For<bool>((plan, _, near) => OnPlot(plan, p => p with { IsNearWater = near })),
        [SeedCodes.AskRegion] = WayIntoPlan.For<PlantingRegion>(
            (plan, _, region) => OnPlot(plan, p => p with { PlantingRegion = region })
        ),
        [SeedCodes.AskDrainage] = WayIntoPlan.For<DrainageClass>(
            (plan, _, drains) => OnPlot(plan, p => p with { Drainage = drains })
        ),
        [SeedCodes.AskRate] = WayIntoPlan.For<SowingMethod>((plan, _, method) => plan with { Method = Planted(method) }),
        [SeedCodes.AskFullRate] = WayIntoPlan.For<PrintedEnd>((plan, _, end) => SeedParts.WithFullRates(plan, end)),
        [SeedCodes.AskHomeTest] = WayIntoPlan.For<Fraction>((plan, _, alive) => UntaggedSeed.If(plan, alive)),
        [SeedCodes.AskTestMonth] = WayIntoPlan.For<TestMonth>(OnTag),
    };

    /// <summary>Questions of which no amount, date or caution on a sheet rests on the answer, with the reason.</summary>
    internal static IReadOnlyDictionary<string, string> NothingPrinted { get; } =
        new Dictionary<string, string>
        {
            [SoilCodes.AskAcidity] = "the exchange capacity stands by itself; no rate rests on it",
            [SoilCodes.AskFreeLime] = "sulfur to lower the pH is no line of the sheet",
            [FertilizerCodes.AskSoilTemperature] = "the loss of urea to the air stands by itself; no rate rests on it",
            [NutrientCodes.AskRatings] = "the classes stand by themselves; no rate rests on them",
        };

    internal static IEnumerable<string> Codes => Ways.Keys;

    /// <summary>The plan with each plausible answer; none where there is no way.</summary>
    internal static ImmutableArray<AnsweredPlan> Answered(PlotPlan plan, OpenQuestion question) =>
        Ways.TryGetValue(question.Code, out var way) ? way.Answered(plan, question) : [];

    private static PlotPlan? Reported(PlotPlan plan, Func<SoilReport, SoilReport> changed) =>
        plan.Report is { } report ? plan with { Report = changed(report) } : null;

    private static PlotPlan OnPlot(PlotPlan plan, Func<Plot, Plot> changed) => plan with { Plot = changed(plan.Plot) };

    /// <summary>A printed rate with one more of its labels, or one end of its range.</summary>
    private static PlotPlan? OnPrintedLime(PlotPlan plan, Func<PrintedLimeRate, PrintedLimeRate> changed) =>
        plan.Printed is { Lime: { } printed } advice ? plan with { Printed = advice with { Lime = changed(printed) } } : null;

    private static PlotPlan? OnLabel(PlotPlan plan, OpenQuestion question, LimeFigure figure) =>
        figure.Value > 0
            ? plan with
            {
                LimeOffers =
                [
                    .. plan.LimeOffers.Select(o =>
                        o.Item.Name == question.Subject ? o with { Item = o.Item.WithFigure(figure) } : o
                    ),
                ],
            }
            : null;

    /// <summary>A buffer pH that the method reads; no other reading has a place of its own here.</summary>
    private static PlotPlan? Read(PlotPlan plan, OpenQuestion question, double reading) =>
        plan.LimeMethod is { Buffers: [var buffer, ..] }
            ? Reported(plan, r => r with { BufferPhs = [.. r.BufferPhs, BufferPh.FromValue(reading, buffer)] })
            : null;

    private static PlotPlan OnTag(PlotPlan plan, OpenQuestion question, TestMonth month) =>
        plan with
        {
            Kinds =
            [
                .. plan.Kinds.Select(k =>
                    k.Offer.Item.ToString() == question.Subject
                        ? k with
                        {
                            Offer = k.Offer with { Item = k.Offer.Item with { TestMonth = month } },
                        }
                        : k
                ),
            ],
        };

    private static PlantingMethod Planted(SowingMethod method) =>
        method switch
        {
            SowingMethod.Drilled => PlantingMethod.Drilled,
            SowingMethod.FrostSeeded => PlantingMethod.FrostSeeded,
            SowingMethod.BroadcastUnderCover => PlantingMethod.BroadcastThenRolled,
            _ => PlantingMethod.TilledAndPacked,
        };
}
