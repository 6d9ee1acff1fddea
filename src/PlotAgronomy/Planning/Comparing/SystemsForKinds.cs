using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>What every system says for kinds that all systems take alike. Each nutrient is asked for by itself, because a system
/// may take a kind as another row for it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SystemsForKinds
{
    private readonly Func<SystemsForKinds, ImmutableArray<ConvertedReply>> converted;

    private SystemsForKinds(
        AskedKinds asked,
        SystemComparison phosphate,
        SystemComparison potash,
        Func<SystemsForKinds, ImmutableArray<ConvertedReply>> converted
    )
    {
        this.converted = converted;
        Kinds = asked.Kinds;
        Phosphate = phosphate.About(PlantNutrient.Phosphate);
        Potash = potash.About(PlantNutrient.Potash);
        var replies = RecommendationSystem.Everything.Select(s => new SystemReply(s, phosphate, potash)).ToList();
        Answering = [.. replies.Where(r => !r.Answers.IsEmpty)];
        Silent = [.. replies.Where(r => r.Answers.IsEmpty).Select(asked.SilenceOf)];
    }

    /// <summary>Gets the kinds; all of the plan's where a row was asked for.</summary>
    public ImmutableArray<CropKind> Kinds { get; }

    /// <summary>Gets the systems with a rate or a rating for phosphate or potash.</summary>
    public ImmutableArray<SystemReply> Answering { get; }

    /// <summary>Gets the others, and why they are silent.</summary>
    public ImmutableArray<SystemSilence> Silent { get; }

    /// <summary>Gets how far apart the systems are for phosphate; null where fewer than two give a rate.</summary>
    public SystemDisagreement? Phosphate { get; }

    /// <summary>Gets how far apart the systems are for potash; null where fewer than two give a rate.</summary>
    public SystemDisagreement? Potash { get; }

    /// <summary>Whether any answer rests on numbers from memory.</summary>
    /// <summary>Gets what further systems say once a reading is converted by a published equation, where fewer than two give a
    /// rate as it is printed.</summary>
    public ImmutableArray<ConvertedReply> Converted => converted(this);

    internal bool RestsOnMemory => Answering.Any(r => r.Status == DataStatus.Memory);

    /// <summary>What the answering systems are asked for: kinds that share it get the same answers.</summary>
    internal string RowsAsked => string.Join('|', Answering.Select(r => $"{r.System.Id} {r.RowsAsked}"));

    internal static SystemsForKinds Ask(PlotPlan plan, AskedKinds asked, bool includeFromMemory)
    {
        return new(
            asked,
            Compared(plan, asked, PlantNutrient.Phosphate, includeFromMemory),
            Compared(plan, asked, PlantNutrient.Potash, includeFromMemory),
            made =>
                ConvertedReplies.Of(plan, made.Answering, includeFromMemory, (changed, nutrient) =>
                    Compared(changed, asked, nutrient, includeFromMemory)
                )
        );
    }

    private static SystemComparison Compared(PlotPlan plan, AskedKinds asked, PlantNutrient nutrient, bool includeFromMemory) =>
        SystemComparison.For(
            plan.Soil,
            s => asked.CropFor(s, nutrient) is { } use ? use with { BuildUpYears = plan.BuildUpYears } : null,
            RecommendationSystem.Everything,
            s => includeFromMemory || s == plan.NutrientSystem
        );

    /// <summary>The kinds and who answers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{string.Join(", ", Kinds.Select(k => k.ShortName))}: {Amounts.PrintCount(Answering.Length, "system")} with an answer";
}
