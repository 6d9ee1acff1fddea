using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <summary>The lines of the indices of diversity: each sum term by term.</summary>
internal static class DiversityWork
{
    internal static ImmutableArray<WorkedLine> Of(
        ImmutableArray<(CropKind Kind, double Share)> kinds,
        double shannon,
        double simpson
    ) =>
        [
            .. kinds.Select(k => Term("blend-shannon-term", k, BlendMath.ShannonTerm(k.Share))),
            SumOf("Shannon", kinds.Select(k => BlendMath.ShannonTerm(k.Share)), shannon),
            .. EvennessOf(shannon, kinds.Length),
            BlendFormulas
                .All["blend-effective-kinds"]
                .Line(Amounts.Print(BlendMath.EffectiveKinds(shannon), 2), ("Shannon", Amounts.Print(shannon, 4))),
            .. kinds.Select(k => Term("blend-simpson-term", k, BlendMath.SimpsonTerm(k.Share))),
            SumOf("Chance that two picks are of one kind", kinds.Select(k => BlendMath.SimpsonTerm(k.Share)), 1 - simpson),
            BlendFormulas.All["blend-simpson"].Line(Amounts.Print(simpson, 4), ("one kind", Amounts.Print(1 - simpson, 4))),
        ];

    /// <summary>None for a single kind, which is even by definition.</summary>
    private static IEnumerable<WorkedLine> EvennessOf(double shannon, int kinds) =>
        kinds == 1
            ? []
            :
            [
                BlendFormulas
                    .All["blend-evenness"]
                    .Line(
                        Amounts.Print(BlendMath.Evenness(shannon, kinds), 3),
                        ("Shannon", Amounts.Print(shannon, 4)),
                        ("kinds", Amounts.Print(kinds, 0))
                    ),
            ];

    private static WorkedLine Term(string id, (CropKind Kind, double Share) kind, double term) =>
        BlendFormulas
            .All[id]
            .Line(Amounts.Print(term, 4), ("kind", kind.Kind.ShortName), ("share", Amounts.Print(kind.Share, 4)));

    private static WorkedLine SumOf(string what, IEnumerable<double> terms, double sum) =>
        BlendFormulas.Sum(what, $"{string.Join(" + ", terms.Select(t => Amounts.Print(t, 4)))} = {Amounts.Print(sum, 4)}");
}
