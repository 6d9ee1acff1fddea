using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What is spread in each task of a season, and how deep it goes.</summary>
internal sealed class SeasonMaterials
{
    private readonly PlotAnswers answers;
    private readonly FertilizerAnswer? fertilizer;
    private readonly bool isHalved;

    internal SeasonMaterials(PlotAnswers answers, SeasonCalendar calendar)
    {
        this.answers = answers;
        fertilizer = answers.Fertilizer.TryGetPart(out var bought) ? bought : null;
        isHalved = calendar.Tasks.Any(t => t.Spreads == SeasonSpread.OtherHalf);
    }

    internal IEnumerable<SeasonMaterial> Of(SeasonTask task) =>
        task.Pass is { } pass
            ? SeasonPasses
                .KindsOf(answers, pass)
                .SelectMany(ToWeigh)
            : task.Spreads switch
            {
                SeasonSpread.FirstLime => Lime(d => d.MonthsAfterFirst == 0 && (task.Part is null || d.Number == task.Part)),
                SeasonSpread.LaterLime => Lime(d => d.MonthsAfterFirst > 0 && d.Number == task.Part),
                SeasonSpread.Fertilizer => AtSowing.Select(l => Part(l, isHalved && BringsPotash(l) ? 0.5 : 1)),
                SeasonSpread.OtherHalf => AtSowing.Where(BringsPotash).Select(l => Part(l, 0.5)),
                SeasonSpread.Nitrogen => (fertilizer?.Later ?? []).Select(l => Part(l, ShareOf(task.Part!.Value))),
                _ => [],
            };

    /// <summary>What goes on the scale: the kind, or each of its lots where there are several.</summary>
    private static IEnumerable<SeasonMaterial> ToWeigh(SownKind sown)
    {
        if (sown.PoundsOfPlannedLot > 0)
        {
            string name = sown.FromOthers.IsEmpty ? sown.Planned.Kind.ShortName : Named(sown.Planned.Offer.Item);
            yield return new() { Name = name, Mass = sown.OfPlanned };
        }

        foreach (var other in sown.FromOthers)
        {
            yield return new() { Name = Named(other.Offer.Item), Mass = other.Weight };
        }
    }

    private static string Named(SeedLot lot) => $"{lot.Kind.ShortName} (lot {lot.Label})";

    /// <summary>Lime as deep as the ground is worked; seed that is covered or drilled as deep as suits all kinds of its
    /// pass; nothing else.</summary>
    internal (Length Shallowest, Length Deepest)? DepthOf(SeasonTask task)
    {
        if (task.Pass is { } pass)
        {
            var sown = SeasonPasses.Of(answers)[pass - 1];
            bool isLaid = answers.Plan.Method == PlantingMethod.TilledAndPacked && sown.IsCovered;
            return isLaid || answers.Plan.Method == PlantingMethod.Drilled ? Depth(sown) : null;
        }

        bool isWorkedIn = task.Spreads == SeasonSpread.FirstLime && LimePlacing.Of(answers.Plan) == LimePlacement.WorkedIn;
        return isWorkedIn && answers.Plan.TillageDepth is { } deep ? (deep, deep) : null;
    }

    private ImmutableArray<PurchaseLine> AtSowing => fertilizer?.AtSowing ?? [];

    private static (Length, Length)? Depth(SeasonPass pass)
    {
        var depths = pass.Kinds.Select(k => k.Depth).OfType<PlantingDepth>().ToList();
        return depths.Count == 0
            ? null
            : (depths.MaxBy(d => d.Shallowest.Inches)!.Shallowest, depths.MinBy(d => d.Deepest.Inches)!.Deepest);
    }

    private IEnumerable<SeasonMaterial> Lime(Func<LimeDressing, bool> isWanted) =>
        answers.Lime.Told is var lime && lime.Order.OrNull() is { } order
            ? order.Dressings.Where(isWanted).Select(d => new SeasonMaterial { Name = lime.Offer!.Item.Name, Mass = d.Mass })
            : [];

    /// <summary>Nitrogen by the middle of its doses.</summary>
    private double ShareOf(int dose)
    {
        var doses = BoughtDoses.Of(fertilizer);
        return Middle(doses[dose - 1]) / doses.Sum(Middle);
    }

    private static double Middle(NitrogenDose dose) => dose.Low.PoundsPerAcre + dose.High.PoundsPerAcre;

    private static bool BringsPotash(PurchaseLine line) => line.Product.Analysis.Percent(PlantNutrient.Potash) > 0;

    private static SeasonMaterial Part(PurchaseLine line, double share) =>
        new() { Name = line.Product.Name, Mass = Mass.FromPounds(line.Spread.Pounds * share) };
}
