using PlotAgronomy.Liming;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A liming material on offer.</summary>
internal sealed class LimeMaterialShape : OfferShape<LimingMaterial>
{
    internal LimeMaterialShape()
        : base("limeMaterial", "A liming material on offer.")
    {
        var name = Required("name", Text("ground dolomite"), "Name.", o => o.Item.Name);
        var form = Required("form", Choice(LimingWords.Forms), "Form.", o => o.Item.Form);
        const string Equivalent =
            "Calcium carbonate equivalent in percent, a plain number such as 90; may be left out where the label states figures "
            + "of its own.";
        var cce = Optional("cce", NumberTo<double>("cce-high"), Equivalent, o => o.Item.CcePercent);
        var moisture = Optional("moisture", Percent("3 %"), "Moisture.", o => Unless0(o.Item.Moisture));
        var magnesium = Optional("magnesium", Percent("10 %"), "Magnesium, Mg.", o => o.Item.Magnesium);
        var sieves = Optional("sieves", List(Sieve()), "Fineness.", o => o.Item.Sieves?.Passing);
        var figures = Optional(
            "labelFigures",
            List(Figure()),
            "Figures the label or the dealer states; they go before computed ones.",
            o => [.. o.Item.StatedFigures.Where(f => f.PoundsEqualToOneTon is null)]
        ).Answers(LimingCodes.AskLabel);
        var pounds = Optional(
            "poundsEqualToOneTon",
            NumberWithin<double>("one-ton"),
            "North Carolina labels only: pounds that equal one ton of standard lime.",
            o => o.Item.StatedFigures.Select(f => f.PoundsEqualToOneTon).FirstOrDefault(p => p is not null)
        );
        Packed("40 lb");
        Unsaid("a material without calcium carbonate equivalent and figures of its label", o =>
            o.Item is { CcePercent: null, StatedFigures.IsEmpty: true }
        );
        Unsaid("pure carbonate, which the others are measured by", o => o.Item.IsPureCarbonate);

        ReadAs(at =>
        {
            var passing = at.All(sieves);
            var fineness = passing.IsEmpty ? null : at.Try(sieves, () => SieveAnalysis.FromFractions(passing.AsSpan()));
            if (!at.Has(cce) && !at.Has(figures) && !at.Has(pounds))
            {
                throw at.Report(
                    name,
                    $"what does the label of '{at.Get(name)}' state? It needs '{cce.Name}', '{figures.Name}' or '{pounds.Name}'"
                );
            }

            if (at.Has(cce) && at.Maybe(cce) is null)
            {
                throw PlanPart.Unread();
            }

            var material = at.Try(at.Has(cce) ? cce : name, () =>
                LimingMaterial.FromAnalysis(
                    at.Get(name),
                    at.Get(form),
                    at.Maybe(cce),
                    fineness,
                    at.Find(moisture),
                    at.Maybe(magnesium)
                )
            );
            if (at.Maybe(pounds) is { } equal)
            {
                material = at.Try(pounds, () => material.WithFigure(LimeFigure.FromPoundsEqualToOneTon(equal)));
            }

            material = at.All(figures).Aggregate(material, (m, figure) => m.WithFigure(figure));
            return InBags(at, material);
        });
    }

    private static PlanShape<(int Mesh, Fraction Passing)> Sieve()
    {
        var shape = new PlanShape<(int Mesh, Fraction Passing)>("sieve", "One sieve of a fineness test.");
        var mesh = shape.Required("mesh", NumberWithin<int>("sieve-mesh"), "US standard sieve.", s => s.Mesh);
        var passing = shape.Required("passing", Percent("60 %"), "Part of the material that passes it.", s => s.Passing);
        shape.ReadAs(at => (at.Get(mesh), at.Get(passing)));
        return shape;
    }

    private static PlanShape<LimeFigure> Figure()
    {
        var shape = new PlanShape<LimeFigure>("limeLabelFigure", "What a label or dealer states in one state's terms.");
        var indices = Choice(LimeIndex.Everything, i => i.Id);
        var index = shape.Required("index", indices, "Index it is stated in.", f => f.Index);
        const string Unit = "Figure as the label prints it: lb/ton for ENP, ECCE and ENM, percent for the others.";
        var value = shape.Required("value", new PlanLimeFigure(index), Unit, f => f.Value);
        shape.ReadAs(at => at.Try(value, () => LimeFigure.FromValue(at.Get(index), at.Get(value))));
        return shape;
    }
}
