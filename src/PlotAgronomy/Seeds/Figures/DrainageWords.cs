namespace PlotAgronomy.Seeds;

/// <summary>The soil survey's words for how well a soil drains; a plan file uses the same ones.</summary>
internal static class DrainageWords
{
    internal static EnumWords<DrainageClass> All { get; } =
        new(
            (DrainageClass.VeryPoor, "very poorly drained"),
            (DrainageClass.Poor, "poorly drained"),
            (DrainageClass.SomewhatPoor, "somewhat poorly drained"),
            (DrainageClass.ModeratelyWell, "moderately well drained"),
            (DrainageClass.Well, "well drained"),
            (DrainageClass.SomewhatExcessive, "somewhat excessively drained"),
            (DrainageClass.Excessive, "excessively drained")
        );
}
