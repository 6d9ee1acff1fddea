using PlotAgronomy.Land;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>Measured sides; each form of plot has its own.</summary>
internal sealed class SidesShape : PlanShape<PlotArea>
{
    internal SidesShape()
        : base("sides", "Taped or paced sides of the plot.")
    {
        var form = Required("shape", Hyphened<PlotForm>(), "Form of the plot.", a => a.Sides?.Form);
        const string Long = "Long side of a rectangle, or the height between the parallel sides of a trapezoid.";
        var length = Side("length", "210 ft", Long, (PlotForm.Rectangle, 0), (PlotForm.Trapezoid, 2));
        var width = Side("width", "130 ft", "Short side of a rectangle.", (PlotForm.Rectangle, 1));
        const string One = "First side of a triangle; first parallel side of a trapezoid.";
        var a = Side("a", "200 ft", One, (PlotForm.Triangle, 0), (PlotForm.Trapezoid, 0));
        const string Two = "Second side of a triangle; second parallel side of a trapezoid.";
        var b = Side("b", "180 ft", Two, (PlotForm.Triangle, 1), (PlotForm.Trapezoid, 1));
        var c = Side("c", "150 ft", "Third side of a triangle.", (PlotForm.Triangle, 2));
        var radius = Side("radius", "60 ft", "Radius of a circle.", (PlotForm.Circle, 0));

        ReadAs(at =>
        {
            var chosen = at.Get(form);
            PlanField<MeasuredLength>[] needed = chosen switch
            {
                PlotForm.Rectangle => [length, width],
                PlotForm.Triangle => [a, b, c],
                PlotForm.Trapezoid => [a, b, length],
                _ => [radius],
            };
            string word = EnumWords<PlotForm>.FromNames()[chosen];
            foreach (var missing in needed.Where(f => !at.Has(f)))
            {
                at.Report(form, $"a {word} needs the side '{missing.Name}'");
            }

            foreach (var other in Fields.Where(f => f != form && !needed.Contains(f) && at.Has(f)))
            {
                string names = string.Join(", ", needed.Select(f => f.Name));
                at.Report(other, $"a {word} has no side '{other.Name}'; it needs {names}");
            }

            MeasuredLength[] sides = [.. needed.Select(at.Get)];
            return at.Try(form, () => PlotArea.FromSides(chosen, sides));
        });
    }

    /// <param name="name">Name in the file.</param>
    /// <param name="example">Example.</param>
    /// <param name="meaning">One sentence.</param>
    /// <param name="places">The forms that have this side, and which of their sides it is.</param>
    private PlanField<MeasuredLength> Side(
        string name,
        string example,
        string meaning,
        params (PlotForm Form, int Place)[] places
    ) =>
        Optional(name, Length(example).As(MeasuredLength.FromLength, l => l.ToLength()), meaning, area =>
            area.Sides is var (form, sides) && Array.FindIndex(places, p => p.Form == form) is >= 0 and var i
                ? sides[places[i].Place]
                : null
        );
}
