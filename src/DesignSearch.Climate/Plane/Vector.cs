namespace DesignSearch.Climate.Plane;

/// <summary>A direction in the observer's frame.</summary>
internal readonly record struct Vector(double East, double North, double Up)
{
    public static Vector operator +(Vector a, Vector b) => new(a.East + b.East, a.North + b.North, a.Up + b.Up);

    public static Vector operator *(Vector a, double factor) => new(a.East * factor, a.North * factor, a.Up * factor);

    /// <summary>Unit vector along the level towards an azimuth.</summary>
    public static Vector Level(double azimuthDeg)
    {
        var (sin, cos) = Math.SinCos(azimuthDeg * Math.PI / 180);
        return new(sin, cos, 0);
    }

    /// <summary>Unit vector towards the sun.</summary>
    public static Vector Towards(double zenithDeg, double azimuthDeg)
    {
        var (sin, cos) = Math.SinCos(zenithDeg * Math.PI / 180);
        return Level(azimuthDeg) * sin + new Vector(0, 0, cos);
    }

    public double Dot(Vector other) => East * other.East + North * other.North + Up * other.Up;
}
