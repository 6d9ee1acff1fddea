using System.Reflection;
using NCalc;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Formulas;

/// <summary>Every printed formula is evaluated by a general expression library and held against the library's own function.</summary>
public class FormulaTests
{
    private const int Draws = 200;

    private static readonly List<Formula> Formulas =
    [
        .. CsvTable
            .EmbeddedNames.Where(n => n.EndsWith("/formulas.csv", StringComparison.Ordinal))
            .SelectMany(n => new FormulaTable(n).All),
    ];

    private static readonly Dictionary<string, FormulaCheck> Checks = typeof(FormulaTests)
        .Assembly.GetTypes()
        .SelectMany(t => t.GetProperties(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public))
        .Where(p => p.PropertyType == typeof(FormulaCheck[]))
        .SelectMany(p => (FormulaCheck[])p.GetValue(null)!)
        .ToDictionary(c => c.Id);

    public static TheoryData<string> Expressions =>
        [.. Formulas.Where(f => f.Kind == FormulaKind.Expression).Select(f => f.Id).Order()];

    [Theory, MemberData(nameof(Expressions))]
    public void A_printed_formula_gives_what_the_function_gives(string id)
    {
        var formula = Formulas.Single(f => f.Id == id);
        Assert.True(Checks.TryGetValue(id, out var check), $"no function is named for the formula {id}");
        Assert.Equal(formula.Places.Order(), check.Domain.Select(d => d.Place).Order());
        var random = new Random(20260701);
        int compared = 0;
        for (int i = 0; i < Draws * 10 && compared < Draws; i++)
        {
            var draw = new Draw(check, random);
            if (formula.Limits is { } limits && !(bool)Evaluate(limits, draw))
            {
                continue;
            }

            double printed = Convert.ToDouble(Evaluate(formula.Text, draw), System.Globalization.CultureInfo.InvariantCulture);
            double computed = check.Kernel(draw);
            Assert.True(
                Math.Abs(printed - computed) <= 1e-9 * Math.Max(1, Math.Abs(computed)),
                $"{id}: printed {printed}, computed {computed}, at {string.Join(", ", draw.Values)}"
            );
            compared++;
        }

        Assert.True(compared >= Draws / 2, $"{id}: only {compared} draws lie within {formula.Limits}");
    }

    [Fact]
    public void Ids_are_unique_in_the_house() => Assert.Empty(Formulas.CountBy(f => f.Id).Where(c => c.Value > 1));

    [Fact]
    public void Every_check_is_of_a_formula() => Assert.Empty(Checks.Keys.Except(Formulas.Select(f => f.Id)));

    [Fact]
    public void At_most_15_percent_are_told_in_words() =>
        Assert.True(
            Formulas.Count(f => f.Kind == FormulaKind.Words) <= 0.15 * Formulas.Count,
            string.Join(", ", Formulas.Where(f => f.Kind == FormulaKind.Words).Select(f => f.Id))
        );

    private static object Evaluate(string text, Draw draw)
    {
        var expression = new Expression(text, ExpressionOptions.IgnoreCaseAtBuiltInFunctions);
        foreach (var (place, value) in draw.Values)
        {
            expression.Parameters[place] = value;
        }

        return expression.Evaluate()!;
    }
}
