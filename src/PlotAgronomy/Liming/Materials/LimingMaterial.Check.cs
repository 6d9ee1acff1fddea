using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <content>Looks for slips between the label and what was typed.</content>
public sealed partial class LimingMaterial
{
    /// <summary>Holds what was typed against what such a material can be: a percent in place of lb/ton, lb/ton in place of a
    /// percent, a share in place of a percent.</summary>
    /// <returns>The findings; empty when nothing looks odd.</returns>
    public ImmutableArray<Finding> Check() => [.. Slips()];

    private IEnumerable<Finding> Slips()
    {
        if (LimingStrength.Of(Form) is { } strength)
        {
            var stated = StatedFigures.Select(f => (f.Index, f.Value));
            if (CcePercent is { } cce && StatedFigures.All(f => f.Index != LimeIndex.CalciumCarbonateEquivalent))
            {
                stated = stated.Prepend((LimeIndex.CalciumCarbonateEquivalent, cce));
            }

            foreach (var (index, value) in stated)
            {
                var (low, high) = strength.In(index);
                if (Tolerance.IsBelow(value, low) || Tolerance.IsAbove(value, high))
                {
                    yield return FindingCatalog.Create(
                        LimingCodes.FigureImplausible,
                        ("material", Name),
                        ("figure", $"{Amounts.Print(value, 2)} {index.Unit}"),
                        ("index", index.Name),
                        ("form", LimingWords.Forms[Form]),
                        ("low", Amounts.Print(low, 0)),
                        ("high", Amounts.Print(high, 0)),
                        ("unit", index.Unit)
                    );
                }
            }
        }

        if (Sieves?.Passing.Max(p => p.Passing.Percent) <= LimingConstants.All["sieves-as-shares"])
        {
            yield return FindingCatalog.Create(LimingCodes.SievesImplausible, ("material", Name));
        }
    }
}
