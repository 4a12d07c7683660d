loads-not-made = los discos no dan { $load }; dan { $made }; pide otra carga al entrenador
loads-made-between = { $below } y { $above }
loads-made-at-most = { $most } como mucho
loads-made-at-least = { $least } como poco
loads-made-nothing = nada parecido
