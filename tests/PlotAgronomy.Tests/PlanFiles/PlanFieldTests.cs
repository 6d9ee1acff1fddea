using System.Text.RegularExpressions;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Every field of the plan file stands in one declaration.</summary>
public partial class PlanFieldTests
{
    /// <summary>Four sorts of offers share the declarations of package and price.</summary>
    private const int SharedByOffers = 3 * 3;

    /// <summary>The code without its comments; the schema's writer has the words of the schema's own language.</summary>
    private static string Code => string.Join('\n', Directory.EnumerateFiles(Repository.PathOf("src/PlotAgronomy/PlanFiles"), "*.cs", SearchOption.AllDirectories)
        .Where(f => Path.GetFileName(f) != "PlanSchema.cs").SelectMany(File.ReadLines).Where(l => !l.TrimStart().StartsWith("///", StringComparison.Ordinal)));

    private static IEnumerable<PlanField> Fields => PlanSchema.Definitions.SelectMany(d => d.Fields);

    /// <summary>A name that stands elsewhere as a text would be a second place to keep alike.</summary>
    [Fact]
    public void The_name_of_a_field_is_typed_once_where_it_is_declared()
    {
        var declared = Declaration().Matches(Code).Select(m => m.Groups["name"].Value).ToList();
        var names = Fields.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(names.Order(StringComparer.Ordinal), declared.Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(Fields.Count() - SharedByOffers, declared.Count);
        string rest = Declaration().Replace(ShapeName().Replace(Code, ""), "");
        Assert.Empty(Literal().Matches(rest).Select(m => m.Groups["text"].Value).Where(names.Contains));
    }

    [Fact]
    public void A_part_has_no_field_twice_and_each_field_says_what_it_means()
    {
        Assert.All(PlanSchema.Definitions, d => Assert.Equal(d.Fields.Count, d.Fields.Select(f => f.Name).Distinct().Count()));
        Assert.All(Fields, f => Assert.EndsWith(".", f.Meaning, StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_knows_no_field_of_another()
    {
        var part = WholePlan.Shape.Part(new PlanNode(PlanNodeKind.Object, "$"), null, []);
        Assert.Throws<System.Diagnostics.UnreachableException>(() => part.Find(new PlotShape(new PlanValueField<PlotAgronomy.Land.PaceCalibration>("own", PlanNeed.Optional, Value.Flag, "Unused.")).IsCarriedOff));
    }

    [Theory]
    [InlineData("6 in", "6 in")]
    [InlineData("0.5 ft", "6 in")]
    [InlineData("15 cm", "15 cm")]
    [InlineData("4.2 m", "4.2 m")]
    [InlineData("1,234.5 ft", "14,814 in")]
    [InlineData("5.123456789012345 ft", "5.123456789012345 ft")]
    [InlineData("0.1234567 ft", "0.1234567 ft")]
    public void An_amount_is_written_in_the_unit_of_the_page_or_another_that_reads_back_exactly(string typed, string written)
    {
        Assert.True(Amounts.TryReadLength(typed, out var length, out _));
        Assert.Equal(written, Value.Length("8 in").Write(length, "$", [])!.Text);
    }

    [Fact]
    public void A_percentage_reads_back_to_the_last_bit()
    {
        for (int thousandths = 0; thousandths <= 100_000; thousandths += 7)
        {
            var part = Fraction.FromPercent(thousandths / 1000.0);
            Assert.True(Amounts.TryReadPercent(Value.Percent("1 %").Write(part, "$", [])!.Text, out var again, out _));
            Assert.Equal(part, again);
        }
    }

    [GeneratedRegex("(?:Required|Optional|Side|Extra)\\(\\s*\"(?<name>[^\"]+)\"")]
    private static partial Regex Declaration();

    [GeneratedRegex("(?:base|new PlanGroup<\\w+>|new PlanShape<[^(]+>|new)\\(\\s*\"[^\"]+\"|string Name => \"[^\"]+\"")]
    private static partial Regex ShapeName();

    [GeneratedRegex("\"(?<text>[^\"\\n]*)\"")]
    private static partial Regex Literal();
}
