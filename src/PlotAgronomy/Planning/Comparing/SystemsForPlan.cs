using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>A plan's report through every recommendation system that accepts it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SystemsForPlan
{
    internal SystemsForPlan() { }

    /// <summary>Gets the plan.</summary>
    public required PlotPlan Plan { get; init; }

    /// <summary>Gets the crop row that every system was asked for; null where each was asked for the rows that the plan's kinds
    /// are taken as.</summary>
    public required CropRow? AskedRow { get; init; }

    /// <summary>Gets the answers, one for each set of kinds that every system takes alike.</summary>
    public required ImmutableArray<SystemsForKinds> Kinds { get; init; }

    /// <summary>Gets the findings of the systems that answer, most serious first.</summary>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(Kinds.SelectMany(k => k.Answering).SelectMany(r => r.Findings).Distinct());

    /// <summary>Those that say that numbers are from memory.</summary>
    internal IEnumerable<Finding> FindingsFromMemory => Findings.Where(f => f.Code == ReferenceCodes.FromMemory);

    /// <summary>Sets of kinds for which the answering systems are asked the same.</summary>
    internal ImmutableArray<ImmutableArray<SystemsForKinds>> Alike =>
        [.. Kinds.GroupBy(k => k.RowsAsked).Select(ImmutableArray<SystemsForKinds> (alike) => [.. alike])];

    /// <summary>Every system that stays silent for any of the kinds, in the order of the systems.</summary>
    internal ImmutableArray<(
        RecommendationSystem System,
        ImmutableArray<(SystemsForKinds For, SystemSilence Silence)> Silences
    )> LeftOut =>
        [
            .. Kinds
                .SelectMany(k => k.Silent.Select(s => (For: k, Silence: s)))
                .GroupBy(s => s.Silence.System)
                .OrderBy(g => RecommendationSystem.Everything.IndexOf(g.Key))
                .Select(g => (g.Key, g.ToImmutableArray())),
        ];

    /// <summary>The systems that would answer for some kinds if they were told more.</summary>
    internal IEnumerable<RecommendationSystem> WouldAnswer =>
        LeftOut.Where(l => l.Silences.Any(s => s.Silence.WouldAnswer)).Select(l => l.System);

    /// <summary>The kinds and who answers.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Kinds);
}
