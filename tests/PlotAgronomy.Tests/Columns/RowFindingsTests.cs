using PlotAgronomy.Columns;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Columns;

public class RowFindingsTests
{
    private static readonly RowFindings Two = RowFindings.InOrder(
        FindingCatalog.Create("column-value-impossible", ("limits", "pH above 0, at most 14")),
        FindingCatalog.Create("column-value-missing", ("what", "the water pH"))
    );

    [Fact]
    public void A_flag_is_the_bit_of_its_code()
    {
        Assert.Equal(["column-value-impossible", "column-value-missing"], Two.Codes);
        Assert.Equal(1UL, Two.FlagOf("column-value-impossible"));
        Assert.Equal(2UL, Two.FlagOf("column-value-missing"));
    }

    [Fact]
    public void Flags_become_findings_again()
    {
        Assert.Empty(Two.In(0));
        Assert.Equal(["column-value-missing"], Two.In(2).Select(f => f.Code));
        Assert.Equal(Two.Codes, Two.In(3).Select(f => f.Code));
        Assert.Contains("pH above 0, at most 14", Two.In(1).Single().Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(ulong.MaxValue)]
    public void A_bit_that_no_finding_has_is_refused(ulong flags)
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Two.In(flags));
        Assert.Equal("flags", refused.ParamName);
        Assert.Contains("lowest 2 bits", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_code_is_refused_with_those_there_are()
    {
        Assert.Contains("column-value-missing", Assert.Throws<KeyNotFoundException>(() => Two.FlagOf("lime-over-target")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Two.FlagOf(null!));
    }

    [Fact]
    public void A_code_stands_once_and_64_are_the_most()
    {
        var missing = FindingCatalog.Create("column-value-missing", ("what", "a value"));
        Assert.Throws<ArgumentException>(() => RowFindings.InOrder(missing, missing));
        Finding[] plain = [.. FindingCatalog.Templates.Where(t => t.Code.StartsWith("lime-", StringComparison.Ordinal) || t.Code.StartsWith("soil-", StringComparison.Ordinal)).Select(t => new Finding(t, [])).Take(65)];
        Assert.Equal(65, plain.Length);
        Assert.Throws<ArgumentException>(() => RowFindings.InOrder(plain));
        var full = RowFindings.InOrder(plain.AsSpan(0, 64));
        Assert.Equal(plain[63].Code, full.In(1UL << 63).Single().Code);
        Assert.Equal(64, full.In(ulong.MaxValue).Length);
    }
}
