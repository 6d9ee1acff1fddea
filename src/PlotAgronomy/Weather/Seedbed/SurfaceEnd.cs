namespace PlotAgronomy.Weather;

/// <summary>Where in the printed range of a texture a seedbed is taken to lie.</summary>
internal enum SurfaceEnd
{
    Driest,
    Middle,
    Wettest,
}
