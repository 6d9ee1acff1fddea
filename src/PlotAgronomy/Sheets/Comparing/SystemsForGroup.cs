using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Sheets;

/// <summary>What every system says for one group of kinds. Each nutrient is asked for by itself, because a system may take a kind
/// as another row for it.</summary>
internal sealed class SystemsForGroup
{
    internal static readonly ImmutableArray<PlantNutrient> Nutrients = [PlantNutrient.Phosphate, PlantNutrient.Potash];

    private readonly ImmutableDictionary<PlantNutrient, SystemComparison> comparisons;

    private SystemsForGroup(AskedGroup group, ImmutableDictionary<PlantNutrient, SystemComparison> comparisons)
    {
        Group = group;
        this.comparisons = comparisons;
        var replies = RecommendationSystem.Everything.Select(s => new SystemReply(s, Nutrients, comparisons)).ToList();
        Answering = [.. replies.Where(r => r.Answers.Length > 0)];
        LeftOut = [.. replies.Where(r => r.Answers.Length == 0).Select(r => (r.System, WhyNot(r)))];
    }

    internal AskedGroup Group { get; }

    /// <summary>The systems with a rate or a rating for P or K.</summary>
    internal ImmutableArray<SystemReply> Answering { get; }

    /// <summary>What the answering systems are asked for: groups that share it get the same answers.</summary>
    internal string Asked => string.Join('|', Answering.Select(r => $"{r.System.Id} {r.AskedFor}"));

    internal ImmutableArray<(RecommendationSystem System, string Why)> LeftOut { get; }

    internal static SystemsForGroup Ask(PlotPlan plan, AskedGroup group, bool includeFromMemory) =>
        new(
            group,
            Nutrients.ToImmutableDictionary(
                n => n,
                n =>
                    SystemComparison.For(
                        plan.Soil,
                        s => group.CropFor(s, n) is { } use ? use with { BuildUpYears = plan.BuildUpYears } : null,
                        RecommendationSystem.Everything,
                        s => includeFromMemory || s == plan.NutrientSystem
                    )
            )
        );

    internal SystemDisagreement? About(PlantNutrient nutrient) => comparisons[nutrient].About(nutrient);

    private string WhyNot(SystemReply reply) =>
        reply.Silences.IsEmpty
            ? Group.WhyNot(reply.System)
            : $"{string.Join("; ", reply.Silences.GroupBy(u => u.Reason).Select(Silent))}.";

    private static string Silent(IGrouping<string, UnansweredNutrient> alike) =>
        $"{string.Join(" and ", alike.Select(u => SheetText.Symbol(u.Nutrient)))}: {alike.Key}";
}
