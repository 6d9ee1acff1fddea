using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <summary>Checks what a blend is stated by, and turns it into live rates.</summary>
internal static class BlendStatement
{
    internal static double SownAlike(BlendComponent component, SowingMethod method, double poundsPerAcre, string name)
    {
        Guard.Above(poundsPerAcre, 0, "lb/ac", name);
        return method == component.Method
            ? poundsPerAcre
            : throw new ArgumentException(
                $"The rate of {component.Kind.ShortName} is {SowingMethods.InWords(method)}, its full rate "
                    + $"{SowingMethods.InWords(component.Method)}: a share needs both sown the same way.",
                name
            );
    }

    internal static ImmutableArray<(BlendComponent Component, double LivePoundsPerAcre)> Each<T>(
        ReadOnlySpan<(BlendComponent Component, T Amount)> kinds,
        Func<(BlendComponent Component, T Amount), (BlendComponent, double)> toLive
    )
    {
        var all = ImmutableArray.CreateBuilder<(BlendComponent, double)>(kinds.Length);
        foreach (var kind in kinds)
        {
            ArgumentNullException.ThrowIfNull(kind.Component, nameof(kinds));
            all.Add(toLive(kind));
        }

        return all.MoveToImmutable();
    }

    internal static ImmutableArray<(BlendComponent Component, double Share)> SumToOne(
        ReadOnlySpan<(BlendComponent Component, Fraction Share)> kinds
    )
    {
        var all = ImmutableArray.CreateBuilder<(BlendComponent, double)>(kinds.Length);
        double sum = 0;
        foreach (var (component, share) in kinds)
        {
            ArgumentNullException.ThrowIfNull(component, nameof(kinds));
            all.Add((component, Guard.Above(share.Value, 0, "(a part of one whole)", nameof(kinds))));
            sum += share.Value;
        }

        return Tolerance.AreEqual(sum, 1)
            ? all.MoveToImmutable()
            : throw new ArgumentException($"The shares must sum to 100 %, found {Amounts.Print(sum * 100, 4)} %.", nameof(kinds));
    }
}
