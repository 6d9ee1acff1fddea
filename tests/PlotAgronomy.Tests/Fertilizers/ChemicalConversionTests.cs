using PlotAgronomy.Fertilizers;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Fertilizers;

public class ChemicalConversionTests
{
    private const string File = "Fertilizers/worked-chemistry.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(File);

    [Theory, MemberData(nameof(Ids))]
    public void Exact_factor_matches_the_source(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, ChemicalConversion.ExactFactor(row.Choice<ChemicalForm>("from"), row.Choice<ChemicalForm>("to")));
    }

    [Theory]
    [InlineData(ChemicalForm.Phosphorus, ChemicalForm.Phosphate)]
    [InlineData(ChemicalForm.Potassium, ChemicalForm.Potash)]
    [InlineData(ChemicalForm.Borax, ChemicalForm.Boron)]
    public void There_and_back_is_the_same(ChemicalForm from, ChemicalForm to) =>
        Near.Assert(1, ChemicalConversion.ExactFactor(from, to) * ChemicalConversion.ExactFactor(to, from));

    [Fact]
    public void The_handbook_factor_answers_by_name()
    {
        Assert.Equal(2.29, ChemicalConversion.PublishedFactor(ChemicalForm.Phosphorus, ChemicalForm.Phosphate, Source.Find("FERT-H120")));
        Assert.Throws<ArgumentException>(() => ChemicalConversion.PublishedFactor(ChemicalForm.Boron, ChemicalForm.Borax, Source.Find("FERT-H120")));
    }

    [Fact]
    public void Forms_without_a_common_nutrient_are_refused() =>
        Assert.Throws<ArgumentException>(() => ChemicalConversion.ExactFactor(ChemicalForm.Phosphate, ChemicalForm.Potash));

    [Fact]
    public void Every_form_has_a_formula() =>
        Assert.All(Enum.GetValues<ChemicalForm>(), f => Assert.True(ChemicalFormula.Of(f).MolarMass > 0));
}
